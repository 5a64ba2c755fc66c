//! How much drawing a case costs beyond its bare arithmetic.
//!
//! Both sides run in turn in one process, so their ratio holds on a noisy machine: (a) a case with
//! all its quantities, sampled, worked out and held against its limits; (b) the same calculation
//! functions alone, called one after the other on the same machine's numbers.

#![allow(missing_docs, clippy::unwrap_used)]
#![allow(clippy::disallowed_methods, reason = "it measures time")]

use std::hint::black_box;
use std::time::Instant;

use drivecourse_machine::{Case, Family, Plan, Registry, Role, System};

const ROUNDS: usize = 21;
const CASES: u64 = 4_000;

fn main() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios/families");
    let mut files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    for path in files {
        let id = path.file_stem().unwrap().to_string_lossy().into_owned();
        let text = std::fs::read_to_string(&path).unwrap();
        // A family that is like another runs through the same relations.
        if Family::likeness(&text).is_some() {
            continue;
        }
        let plan = Plan::new(Family::read(&id, &text).unwrap()).unwrap();
        measure(&plan);
    }
}

fn measure(plan: &Plan) {
    let registry = Registry::get();
    let cases: Vec<Case> = (0..CASES).map(|seed| plan.draw(seed).unwrap()).collect();
    let drawn: Vec<_> = plan.family.roots.iter().map(|(id, _)| *id).collect();
    let straight: Vec<_> = (registry.relations().iter())
        .filter(|linked| linked.relation.role != Role::Question && !drawn.contains(&linked.gives))
        .filter(|linked| linked.inputs().chain([linked.gives]).all(|id| !cases[0].values[id.index()].is_nan()))
        .collect();
    let (mut ratios, mut draw_ns, mut seen_ns) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        let start = Instant::now();
        for seed in 0..CASES {
            black_box(plan.draw(black_box(seed)).unwrap());
        }
        let draw = start.elapsed().as_nanos() as f64 / CASES as f64;
        let start = Instant::now();
        for case in &cases {
            for linked in &straight {
                black_box(linked.eval(black_box(&case.values))).ok();
            }
        }
        let bare = start.elapsed().as_nanos() as f64 / CASES as f64;
        let start = Instant::now();
        for case in &cases {
            black_box(case.seen(System::Us));
        }
        seen_ns.push(start.elapsed().as_nanos() as f64 / CASES as f64);
        draw_ns.push(draw);
        ratios.push(draw / bare);
    }
    let rejected: u32 = cases.iter().map(|case| case.rejected).sum();
    println!(
        "{:<20} {} relations  case {:.1} us  {:.0} cases/s  ratio to bare arithmetic {:.2}  reading all instruments {:.1} us  rejected {:.1} %",
        plan.family.id,
        straight.len(),
        median(&mut draw_ns) / 1e3,
        1e9 / median(&mut draw_ns),
        median(&mut ratios),
        median(&mut seen_ns) / 1e3,
        100.0 * f64::from(rejected) / (f64::from(rejected) + CASES as f64),
    );
}

fn median(values: &mut [f64]) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}
