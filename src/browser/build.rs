//! Works out a digest of the source files that the module is made of, so that a module built from others is recognised.

use std::fs;
use std::path::{Path, PathBuf};

/// The crates that go into the module, beside this one.
const CRATES: [&str; 6] = ["browser", "calc", "course", "machine", "math", "quiz"];
/// Files of theirs that do not: they belong to papers, grading and the book.
const ELSEWHERE: [&str; 19] = [
    "course/book",
    "course/card",
    "course/expand",
    "course/pages",
    "course/reference.rs",
    "course/typeset",
    "quiz/bank.rs",
    "quiz/blueprint",
    "quiz/code",
    "quiz/exam",
    "quiz/grade",
    "quiz/paper",
    "quiz/response",
    "quiz/roster",
    "quiz/seal",
    "quiz/simulate.rs",
    "machine/family/read.rs",
    "machine/problem.rs",
    "machine/solve.rs",
];

fn main() {
    println!("cargo::rerun-if-changed=..");
    let root = Path::new("..");
    let mut files = Vec::new();
    for name in CRATES {
        gather(&root.join(name), &mut files);
    }
    files.sort();
    let mut digest = 0xcbf2_9ce4_8422_2325_u64;
    for file in files {
        let name = file.strip_prefix(root).unwrap_or(&file).to_string_lossy().replace('\\', "/");
        if ELSEWHERE.iter().any(|other| name.starts_with(other)) {
            continue;
        }
        let Ok(text) = fs::read_to_string(&file) else { continue };
        add(&mut digest, &name);
        plain(&text).for_each(|line| add(&mut digest, line));
    }
    println!("cargo::rustc-env=DRIVECOURSE_SOURCES={digest:016x}");
}

/// The Rust files below `folder`, without tests and benchmarks.
fn gather(folder: &Path, out: &mut Vec<PathBuf>) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries.flatten() {
        let path = entry.path();
        let name = entry.file_name().to_string_lossy().into_owned();
        let aside = name.starts_with("tests") || name.ends_with("_tests.rs") || name == "benches" || name == "target";
        if path.is_dir() && !aside {
            gather(&path, out);
        } else if name.ends_with(".rs") && !aside {
            out.push(path);
        }
    }
}

/// What a change of counts: no comments, no blank lines, and nothing from the tests on.
fn plain(text: &str) -> impl Iterator<Item = &str> {
    let code = text.split("#[cfg(test)]\nmod tests").next().unwrap_or(text);
    code.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with("//"))
}

/// FNV-1a, 64 bits: the digest tells a mistake, not an attack.
fn add(digest: &mut u64, line: &str) {
    for byte in line.bytes().chain([b'\n']) {
        *digest = (*digest ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
    }
}
