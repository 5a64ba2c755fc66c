//! The modules that ship with the theme run here, in an interpreter, and must be what this source says.

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

#[path = "../../../tests/built_in/mod.rs"]
mod built_in;

use std::fs;
use std::path::{Path, PathBuf};

use built_in::bank;
use drivecourse_browser::{Bundle, Chapter, Desk, Easel, SOURCES, away};
use drivecourse_machine::packed::Packed;
use drivecourse_machine::{Plan, System, amount, topics};
use drivecourse_quiz::{Body, CaseName, Chosen, Question, Setting};
use wasmi::{Engine, Instance, Linker, Memory, Module, Store, TypedFunc, Val};

/// Cases marked on both sides.
const CASES: usize = 10_000;
/// Of every so many, one is compared with everything its card shows.
const WHOLE: usize = 25;
/// Pages of memory, of 64 KiB, that the practice module may have taken after all of them.
const MOST_PAGES: u64 = 256;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// A module, opened.
struct Shipped {
    store: Store<()>,
    instance: Instance,
    memory: Memory,
    alloc: TypedFunc<u32, u32>,
    free: TypedFunc<(u32, u32), ()>,
    run: TypedFunc<(u32, u32), u64>,
}

/// The module of this name, started; what it imports is what `practice` exports.
fn start(store: &mut Store<()>, name: &str, practice: Option<Instance>) -> Instance {
    let bytes = fs::read(root().join(format!("theme/live/{name}.wasm"))).unwrap_or_else(|_| panic!("no {name}.wasm"));
    let module = Module::new(store.engine(), &bytes).unwrap();
    let mut linker = Linker::new(store.engine());
    if let Some(practice) = practice {
        linker.instance(&mut *store, "practice", practice).unwrap();
    }
    linker.instantiate_and_start(store, &module).unwrap()
}

impl Shipped {
    /// Opens the module of this name with `text`; the digest of its sources.
    fn open(name: &str, text: &str) -> (Self, String) {
        let mut store = Store::new(&Engine::default(), ());
        let instance = start(&mut store, name, None);
        let memory = instance.get_memory(&store, "memory").unwrap();
        let (alloc, free, run) = (
            instance.get_typed_func(&store, "alloc").unwrap(),
            instance.get_typed_func(&store, "free").unwrap(),
            instance.get_typed_func(&store, "run").unwrap(),
        );
        let mut shipped = Self { store, instance, memory, alloc, free, run };
        let reply: serde_json::Value = serde_json::from_str(&shipped.called(text)).unwrap();
        let sources = reply["sources"].as_str().unwrap_or_else(|| panic!("{name} does not open: {reply}")).to_owned();
        (shipped, sources)
    }

    /// The answer to `request`, with the calculations connected that it needs: as a page does it.
    fn answer(&mut self, request: &str) -> String {
        loop {
            let reply = self.called(request);
            if !reply.starts_with("{\"needs\":") {
                return reply;
            }
            let reply: serde_json::Value = serde_json::from_str(&reply).unwrap();
            reply["needs"].as_array().unwrap().iter().for_each(|name| self.connect(name.as_str().unwrap()));
        }
    }

    fn connect(&mut self, name: &str) {
        let other = start(&mut self.store, name, Some(self.instance));
        let work = other.get_func(&self.store, "work").unwrap();
        let place = other.get_typed_func::<(), u32>(&self.store, "place").unwrap().call(&mut self.store, ()).unwrap();
        let table = self.instance.get_table(&self.store, "__indirect_function_table").unwrap();
        let at = table.grow(&mut self.store, 1, Val::from(work)).unwrap();
        let connect = self.instance.get_typed_func::<(u32, u32), ()>(&self.store, "connect").unwrap();
        connect.call(&mut self.store, (place, at as u32)).unwrap();
    }

    fn called(&mut self, request: &str) -> String {
        let length = request.len() as u32;
        let at = self.alloc.call(&mut self.store, length).unwrap();
        self.memory.write(&mut self.store, at as usize, request.as_bytes()).unwrap();
        let reply = self.run.call(&mut self.store, (at, length)).unwrap();
        let (at, length) = ((reply >> 32) as u32, reply as u32);
        let mut bytes = vec![0; length as usize];
        self.memory.read(&self.store, at as usize, &mut bytes).unwrap();
        self.free.call(&mut self.store, (at, length)).unwrap();
        String::from_utf8(bytes).unwrap()
    }
}

fn request(words: &[&str]) -> String {
    let mut out = String::new();
    words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>().pack(&mut out);
    out
}

/// What a person may write to each part: right, foreseen, slipped, in another unit, odd.
fn answers(question: &Question, turn: usize) -> Vec<String> {
    let one = |(place, part): (usize, &drivecourse_quiz::Part)| {
        let right = part.right_answer(question.system);
        let Body::Quantity { asked, keys, predicted } = &part.body else {
            return if turn.is_multiple_of(2) { right } else { "B A C".into() };
        };
        let write = |base: f64| amount::write(asked.get(), base, question.system);
        match (turn + place) % 6 {
            0 | 1 => right,
            2 | 3 if !predicted.is_empty() => write(predicted[turn / 6 % predicted.len()].value),
            4 => write(keys[0].value * 10.0),
            5 if turn % 12 == 5 => format!("{} furlongs?", turn),
            _ => write(keys[0].value * 1.37),
        }
    };
    question.parts.iter().enumerate().map(one).collect()
}

#[test]
fn the_shipped_modules_are_made_from_these_sources() {
    let bundle = Bundle::pack(&bank(), &[]);
    let (_, practice) = Shipped::open("practice", &[bundle.words(), bundle.bank()].concat());
    let (_, pictures) = Shipped::open("pictures", bundle.words());
    let mut found = vec![("practice".to_owned(), practice), ("pictures".to_owned(), pictures)];
    for place in 0..=topics::titles().count() {
        let mut store = Store::new(&Engine::default(), ());
        let practice = start(&mut store, "practice", None);
        let module = start(&mut store, &away::name(place), Some(practice));
        let ask = |what| module.get_func(&store, what).unwrap();
        let (its_place, sources) = (ask("place"), ask("sources"));
        let its_place = its_place.typed::<(), u32>(&store).unwrap().call(&mut store, ()).unwrap();
        assert_eq!(its_place as usize, place, "{}", away::name(place));
        let sources = sources.typed::<(), u64>(&store).unwrap().call(&mut store, ()).unwrap();
        found.push((away::name(place), format!("{sources:016x}")));
    }
    for (name, sources) in found {
        assert_eq!(sources, SOURCES, "theme/live/{name}.wasm is stale; build it again: sh theme/live/build.sh");
    }
}

#[test]
fn ten_thousand_cases_are_drawn_marked_and_diagnosed_alike() {
    let bank = bank();
    let bundle = Bundle::pack(&bank, &[]);
    let text = [bundle.words(), bundle.bank()].concat();
    let settings: Vec<Setting<'_>> =
        System::ALL.into_iter().flat_map(|system| bank.settings(system, |_, _: &Plan| true)).collect();
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let work = |thread: usize| {
        let mut desk = Desk::open(&text).unwrap();
        let (mut shipped, _) = Shipped::open("practice", &text);
        let (mut easel, (mut drawing, _)) =
            (Easel::open(bundle.words()).unwrap(), Shipped::open("pictures", bundle.words()));
        let mut marked = 0;
        // Each thread keeps to its own settings, so that each is made ready once.
        for (place, setting) in settings.iter().enumerate().filter(|(place, _)| place % threads == thread) {
            let share = CASES / settings.len() + usize::from(place < CASES % settings.len());
            for turn in 0..share {
                let seed = (place * 7919 + turn) as u64;
                let question = setting.question(seed).unwrap();
                let (seed, system) = (seed.to_string(), setting.system.code());
                let spot = [question.item.as_str(), &question.family, &seed, system, system];
                let written = answers(&question, turn);
                let mark: Vec<&str> =
                    ["mark"].into_iter().chain(spot).chain(written.iter().map(String::as_str)).collect();
                let mark = request(&mark);
                assert_eq!(shipped.answer(&mark), desk.answer(&mark), "{spot:?} {written:?}");
                marked += 1;
                if (place + turn) % WHOLE == 0 {
                    let put = request(&["put", spot[0], spot[1], spot[2], spot[3], "card"]);
                    let card = desk.answer(&put);
                    assert_eq!(shipped.answer(&put), card, "{spot:?}");
                    let card: serde_json::Value = serde_json::from_str(&card).unwrap();
                    let portrait = card["card"]["faces"][0]["solved_figure"].as_str().unwrap();
                    assert_eq!(drawing.answer(portrait), easel.answer(portrait), "{spot:?}");
                }
            }
        }
        // What requests took was given back and used again; a case takes some 50 KB.
        let pages = shipped.memory.size(&shipped.store);
        assert!(pages <= MOST_PAGES, "{pages}");
        marked
    };
    let marked: usize = std::thread::scope(|scope| {
        let threads: Vec<_> = (0..threads).map(|thread| scope.spawn(move || work(thread))).collect();
        threads.into_iter().map(|thread| thread.join().unwrap()).sum()
    });
    assert_eq!(marked, CASES);
}

#[test]
fn several_questions_about_one_machine_are_marked_alike() {
    let bank = bank();
    let bundle = Bundle::pack(&bank, &[]);
    let text = [bundle.words(), bundle.bank()].concat();
    let mut desk = Desk::open(&text).unwrap();
    let (mut shipped, _) = Shipped::open("practice", &text);
    let plan = &bank.plans[bank.plan_place("quarry-conveyor").unwrap()];
    let faults: [Option<Vec<String>>; 3] = [None, Some(vec![]), Some(vec!["soft-foot".into(), "tight-chain".into()])];
    let (mut asked, mut turn) = (0, 0);
    for item in ["dial-rises", "sag-to-movement", "bolt-torque", "key-stress", "heights-to-shims", "align-order"] {
        let item = &bank.items[bank.item_place(item).unwrap()];
        let settings: Vec<_> =
            System::ALL.into_iter().map(|system| Setting::new(item, plan, system).unwrap()).collect();
        for faults in &faults {
            turn += 1;
            let chosen = Chosen { place: turn as u64 % 5, faults: faults.clone() };
            let case = CaseName { seed: 7, chosen: Some(chosen) };
            let name = case.to_string();
            let spot = [item.id.as_str(), &plan.family.id, &name, "both"];
            let put = request(&["put", spot[0], spot[1], spot[2], spot[3], "card"]);
            let card = desk.answer(&put);
            assert_eq!(shipped.answer(&put), card, "{spot:?}");
            // Not every item suits every machine; where it does, the questions are those of the book.
            let Ok(questions) = case.questions(&settings.iter().collect::<Vec<_>>()) else {
                assert!(card.contains("error"), "{spot:?}: {card}");
                continue;
            };
            assert!(card.contains(&format!("\"seed\":\"{name}\"")), "{card}");
            for question in &questions {
                let code = question.system.code();
                // A question that reads the same in both systems has one face.
                if !card.contains(&format!("\"system\":\"{code}\"")) {
                    continue;
                }
                for turn in 0..6 {
                    let written = answers(question, turn);
                    let mut mark = vec!["mark", spot[0], spot[1], spot[2], spot[3], code];
                    mark.extend(written.iter().map(String::as_str));
                    let reply = desk.answer(&request(&mark));
                    assert_eq!(shipped.answer(&request(&mark)), reply, "{spot:?} {written:?}");
                    let marks: serde_json::Value = serde_json::from_str(&reply).unwrap();
                    let right = (marks["marks"]["marks"].as_array().unwrap().iter())
                        .all(|mark| ["right", "carried"].contains(&mark["verdict"].as_str().unwrap()));
                    let whole: Vec<String> =
                        question.parts.iter().map(|part| part.right_answer(question.system)).collect();
                    assert!(right || written != whole, "{spot:?}: {written:?} is {reply}");
                }
                asked += 1;
            }
        }
    }
    assert!(asked >= 12, "{asked}");
}

#[test]
fn skills_stand_under_the_chapters_that_practise_them() {
    let bank = bank();
    let chapter = |title: &str, items: &[&str]| Chapter {
        title: title.into(),
        items: items.iter().map(|item| (*item).into()).collect(),
    };
    let chapters = [chapter("Chains first", &["sag-to-movement", "links-to-fit"]), chapter("Feet", &["dial-rises"])];
    let bundle = Bundle::pack(&bank, &chapters);
    let text = [bundle.words(), bundle.bank()].concat();
    let (mut shipped, _) = Shipped::open("practice", &text);
    let request = request(&["progress", "1000"]);
    let reply = shipped.answer(&request);
    assert_eq!(Desk::open(&text).unwrap().answer(&request), reply);
    let reply: serde_json::Value = serde_json::from_str(&reply).unwrap();
    let groups = reply["skills"]["groups"].as_array().unwrap();
    let titles: Vec<_> = groups.iter().map(|group| group["title"].as_str().unwrap()).collect();
    assert_eq!(titles[..2], ["Chains first", "Feet"]);
    assert!(titles.contains(&"Noise") && !titles.contains(&"Chain"), "{titles:?}");
    let skills = |group: &serde_json::Value| -> Vec<String> {
        let rows = group["skills"].as_array().unwrap().iter();
        rows.map(|row| row["skill"].as_str().unwrap().to_owned()).collect()
    };
    let skill = |item: &str| bank.items[bank.item_place(item).unwrap()].skill.clone();
    assert_eq!(skills(&groups[0])[..2], [skill("sag-to-movement"), skill("links-to-fit")]);
    let mut all: Vec<String> = groups.iter().flat_map(skills).collect();
    let mut known: Vec<String> = bank.items.iter().map(|item| item.skill.clone()).collect();
    all.sort();
    known.sort();
    known.dedup();
    assert_eq!(all, known);
}

#[test]
fn odd_requests_are_answered_with_a_sentence() {
    let bundle = Bundle::pack(&bank(), &[]);
    let text = [bundle.words(), bundle.bank()].concat();
    let (mut shipped, _) = Shipped::open("practice", &text);
    let mut desk = Desk::open(&text).unwrap();
    for words in [
        &["put"][..],
        &["put", "no-such-item", "", "7", "si", "card"],
        &["put", "shim-pack", "no-such-family", "7", "us", "card"],
        &["put", "shim-pack", "", "-7", "si", "card"],
        &["put", "shim-pack", "", "7:0:no-such-fault", "si", "card"],
        &["put", "shim-pack", "", "7:x", "si", "card"],
        &["read", "shim-pack", "bucket-lift", "7", "si", "si", "99", "1 mm"],
        &["mark", "shim-pack", "bucket-lift", "7", "si", "us", "1 mm"],
        &["progress", "10", "shims", "5", "1"],
        &["progress", "10", "shims", "5", "1", "0", "<b>", "6", "0", "1"],
    ] {
        let request = request(words);
        let reply = desk.answer(&request);
        assert_eq!(shipped.answer(&request), reply, "{words:?}");
        let reply: serde_json::Value = serde_json::from_str(&reply).unwrap();
        assert!(reply.is_object(), "{words:?}: {reply}");
    }
    assert!(shipped.answer("not packed").contains("not understood"));
}
