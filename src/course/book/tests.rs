use super::*;

/// Every file below a folder under its name, with `/` between folders.
fn files(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    fn walk(folder: &Path, prefix: &str, list: &mut BTreeMap<String, Vec<u8>>) {
        for entry in fs::read_dir(folder).unwrap() {
            let entry = entry.unwrap();
            let name = format!("{prefix}{}", entry.file_name().to_string_lossy());
            if entry.file_type().unwrap().is_dir() {
                walk(&entry.path(), &format!("{name}/"), list);
            } else {
                list.insert(name, fs::read(entry.path()).unwrap());
            }
        }
    }
    let mut list = BTreeMap::new();
    walk(folder, "", &mut list);
    list
}

const SUMMARY: &str = "# Summary\n\n[Start](start.md)\n\n# Mounting\n\n- [Soft foot & \"shims\"](mount/soft-foot.md)\n  - \
                       [Bolts](mount/bolts.md)\n\n# Running\n\n- [Chain](chain.md)\n- [Later]()\n";

/// The usual options, in English.
fn options() -> Options {
    Options { words: crate::words::tests::english(), ..Options::default() }
}

/// A small course with everything the theme styles, in our real theme.
fn sample() -> Assets {
    let chapters = [
        ("SUMMARY.md", SUMMARY),
        (
            "start.md",
            "# Start\n\n> [!CAUTION]\n> Isolate and lock out first.\n\n> [!NOTE]\n> Read on.\n\nSee [chain](chain.md).\n",
        ),
        ("mount/soft-foot.md", include_str!("tests/soft-foot.md")),
        ("mount/bolts.md", "# Bolts\n\n## Torque\n\nText, <https://example.org/>.\n"),
        ("chain.md", include_str!("tests/chain.md")),
        ("mount/empty.txt", ""),
        ("mount/plate.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"),
    ];
    Assets {
        chapters: chapters.iter().map(|(name, text)| ((*name).to_string(), text.as_bytes().to_vec())).collect(),
        theme: files(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../../theme")),
    }
}

fn text(folder: &Path, name: &str) -> String {
    fs::read_to_string(folder.join(name)).unwrap_or_else(|e| panic!("{name}: {e}"))
}

fn refusal(out: &Path, sources: &[PathBuf]) -> String {
    check_output(out, sources).expect_err("should be refused").to_string()
}

#[test]
fn builds_every_page_in_our_theme() {
    let home = tempfile::tempdir().unwrap();
    let out = home.path().join("site/course");
    let built = build(&sample(), &out, Vec::new(), &options()).unwrap();
    assert_eq!(built.chapters, 4);
    assert_eq!(built.warnings, Vec::<String>::new());
    for page in
        ["index.html", "start.html", "mount/soft-foot.html", "mount/bolts.html", "chain.html", "toc.html", "print.html"]
    {
        let html = text(&out, page);
        let skip = html.find("class=\"skip\"").unwrap();
        assert!(skip < html.find("<header").unwrap(), "{page}: the skip link comes first");
        if let Some(contents) = html.find("<nav class=\"contents\"") {
            assert!(html.find("<main").unwrap() < contents, "{page}: text before contents");
        }
        for fault in ["<!--contents", "units-to-be-set", "<script>", "blockquote-tag", "mdbook", " onclick", " style="]
        {
            assert!(!html.contains(fault), "{page} contains {fault}");
        }
    }
    let stock = ["ayu", "tomorrow", "highlight", "clipboard", "fonts", "mark-", "searcher-", "nojekyll", "toc-"];
    for name in files(&out).keys() {
        assert!(!stock.iter().any(|s| name.contains(s)), "{name} belongs to the stock look");
    }
    assert!(out.join("mount/plate.svg").is_file());
    assert!(out.join("mount/empty.txt").is_file(), "an author's file stays even when empty");
    assert!(!out.join("SUMMARY.md").exists());
    if let Ok(keep) = std::env::var("DRIVECOURSE_KEEP_SAMPLE") {
        build(&sample(), Path::new(&keep), Vec::new(), &options()).unwrap();
    }
}

#[test]
fn contents_lead_everywhere_and_mark_the_page() {
    let home = tempfile::tempdir().unwrap();
    let out = home.path().join("course");
    build(&sample(), &out, Vec::new(), &Options { units: Units::Si, ..options() }).unwrap();
    let html = text(&out, "mount/bolts.html");
    assert!(html.contains("<a href=\"../mount/bolts.html\" aria-current=\"page\">"));
    assert!(html.contains("<a href=\"../chain.html\">"));
    assert!(html.contains("Soft foot &amp; \"shims\"</span></a>\n<ol>"));
    assert!(html.contains("<h3 class=\"contents-part\">Running</h3>"));
    assert!(html.contains("<span class=\"contents-later\">"));
    assert!(html.contains("data-units-default=\"si\""));
    assert!(html.contains("<span>Next:</span> Chain</a>"));
    assert!(text(&out, "toc.html").contains("<h2 class=\"contents-part\">Running</h2>"));
}

#[test]
fn cautions_are_ours_and_the_whole_course_has_one_first_heading() {
    let home = tempfile::tempdir().unwrap();
    let out = home.path().join("course");
    build(&sample(), &out, Vec::new(), &options()).unwrap();
    let html = text(&out, "start.html");
    assert!(html.contains("<blockquote class=\"caution\">\n<p class=\"box-word\">Caution</p>"), "{html}");
    assert!(html.contains("<blockquote class=\"aside\">\n<p class=\"box-word\">Note</p>"));
    let whole = text(&out, "print.html");
    assert_eq!(whole.matches("<h1").count(), 1);
    assert_eq!(whole.matches("<div class=\"page-turn\"></div>").count(), 3);
}

#[test]
fn search_can_be_left_out() {
    let home = tempfile::tempdir().unwrap();
    let (with, without) = (home.path().join("with"), home.path().join("without"));
    build(&sample(), &with, Vec::new(), &options()).unwrap();
    build(&sample(), &without, Vec::new(), &Options { search: false, ..options() }).unwrap();
    let parts = |folder: &Path| {
        files(folder).keys().filter(|n| n.contains("searchindex-") || n.contains("elasticlunr")).count()
    };
    assert_eq!((parts(&with), parts(&without)), (2, 0));
    assert!(text(&with, "chain.html").contains("id=\"search\""));
    assert!(!text(&without, "chain.html").contains("id=\"search\""));
}

#[test]
fn the_same_bytes_twice() {
    let home = tempfile::tempdir().unwrap();
    let (one, two) = (home.path().join("one"), home.path().join("two"));
    let options = options();
    build(&sample(), &one, Vec::new(), &options).unwrap();
    build(&sample(), &two, Vec::new(), &options).unwrap();
    assert_eq!(files(&one), files(&two));
    build(&sample(), &one, Vec::new(), &options).unwrap();
    assert_eq!(files(&one), files(&two), "building over an earlier build leaves nothing of it");
}

struct Adds(&'static str);

impl Preprocessor for Adds {
    fn name(&self) -> &str {
        "adds"
    }

    fn run(&self, _: &PreprocessorContext, mut book: Book) -> AnyResult<Book> {
        if self.0.is_empty() {
            return Err(mdbook_core::errors::Error::msg("the practice block on line 3 has no question"));
        }
        book.for_each_chapter_mut(|chapter| chapter.content.push_str(self.0));
        Ok(book)
    }
}

#[test]
fn preprocessors_run_and_a_failed_build_leaves_the_old_one() {
    let home = tempfile::tempdir().unwrap();
    let out = home.path().join("course");
    build(&sample(), &out, vec![Box::new(Adds("\n\nAdded words.\n"))], &options()).unwrap();
    let before = files(&out);
    assert!(text(&out, "chain.html").contains("<p>Added words.</p>"));

    let error = build(&sample(), &out, vec![Box::new(Adds(""))], &options()).unwrap_err();
    assert!(error.to_string().contains("the practice block on line 3 has no question"), "{error}");
    assert_eq!(files(&out), before);
    let beside: Vec<_> = fs::read_dir(home.path()).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(beside, ["course"], "nothing half-written is left beside it");
}

#[test]
fn faults_in_the_list_of_chapters_are_named() {
    let home = tempfile::tempdir().unwrap();
    let out = home.path().join("course");
    let fail = |change: &dyn Fn(&mut Assets)| {
        let mut assets = sample();
        change(&mut assets);
        build(&assets, &out, Vec::new(), &options()).unwrap_err().to_string()
    };
    assert!(fail(&|a| drop(a.chapters.remove("SUMMARY.md"))).contains("no SUMMARY.md"));
    let missing = fail(&|a| drop(a.chapters.remove("chain.md")));
    assert!(missing.contains("chain.md") && !missing.contains("/tmp"), "{missing}");
    let none = fail(&|a| drop(a.chapters.insert("SUMMARY.md".into(), b"# Summary\n".to_vec())));
    assert!(none.contains("lists no chapter"), "{none}");
    let escaping = fail(&|a| drop(a.chapters.insert("../x.md".into(), Vec::new())));
    assert!(escaping.contains("leads out"), "{escaping}");
    let template = fail(&|a| drop(a.theme.insert("index.hbs".into(), b"{{#if}".to_vec())));
    assert!(template.contains("could not be built"), "{template}");
    assert!(!out.exists());

    let mut assets = sample();
    assets.chapters.insert("lost.md".into(), b"# Lost".to_vec());
    let built = build(&assets, &out, Vec::new(), &options()).unwrap();
    assert_eq!(built.warnings, ["`lost.md` is not listed in SUMMARY.md, so it is not in the course"]);
}

#[test]
fn the_book_program_itself_empties_its_output() {
    // Why the guards exist: pointed at a folder directly, the book program deletes what stands there.
    let home = tempfile::tempdir().unwrap();
    write_sources(&sample(), home.path(), &crate::words::tests::english()).unwrap();
    let target = home.path().join("book");
    write(&target.join("our-chapter.md"), b"# Ours").unwrap();
    let config = configure(&sample(), &options(), &target).unwrap();
    MDBook::load_with_config(home.path(), config).unwrap().build().unwrap();
    assert!(!target.join("our-chapter.md").exists());
}

#[test]
fn unsafe_outputs_are_refused_and_nothing_is_deleted() {
    let home = tempfile::tempdir().unwrap();
    let source = home.path().join("work/book");
    write(&source.join("mount/chapter.md"), b"# Ours").unwrap();
    let sources = [source.clone()];

    assert!(refusal(&source, &sources).contains("is the source folder"));
    assert!(refusal(&home.path().join("work/./book"), &sources).contains("is the source folder"));
    assert!(refusal(&home.path().join("work/other/../book"), &sources).contains("is the source folder"));
    assert!(refusal(&home.path().join("work"), &sources).contains("contains the source folder"));
    assert!(refusal(&source.join("mount"), &sources).contains("lies inside the source folder"));
    assert!(refusal(&source.join("new/deep"), &sources).contains("lies inside the source folder"));
    assert!(refusal(Path::new("."), &[]).contains("is the current folder"));
    assert!(refusal(Path::new(".."), &[]).contains("contains the current folder"));
    assert!(refusal(Path::new("/"), &[]).contains("cannot be an output folder"));
    assert!(refusal(&source.join("mount/chapter.md"), &[]).contains("cannot be an output folder"));
    let strange = refusal(&source, &[]);
    assert!(strange.contains("no earlier build") && strange.contains("choose an empty or a new folder"), "{strange}");

    let options = Options { sources: sources.to_vec(), ..options() };
    for out in [&source, &home.path().join("work"), &source.join("mount")] {
        build(&sample(), out, Vec::new(), &options).unwrap_err();
    }
    assert_eq!(fs::read(source.join("mount/chapter.md")).unwrap(), b"# Ours");
    assert!(check_output(&home.path().join("work/bookshelf"), &sources).is_ok(), "a longer name is another folder");
    fs::create_dir(home.path().join("empty")).unwrap();
    assert!(check_output(&home.path().join("empty"), &sources).is_ok());
}

#[cfg(unix)]
#[test]
fn a_link_to_a_source_folder_is_seen_through() {
    let home = tempfile::tempdir().unwrap();
    let source = home.path().join("book");
    fs::create_dir(&source).unwrap();
    std::os::unix::fs::symlink(&source, home.path().join("out")).unwrap();
    assert!(refusal(&home.path().join("out"), &[source]).contains("is the source folder"));
}
