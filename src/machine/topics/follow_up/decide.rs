//! Accept, adjust or stop: each area from its verdicts, then the whole machine from the areas.
//!
//! A family that does not determine every area still gets a decision: the smaller subsets rank behind the full one.

use drivecourse_calc::Error;
use drivecourse_calc::follow_up::verdict::{Finding, Verdict, of_zone, whole_machine};
use drivecourse_calc::vibrate::zone::Zone;

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice};
use crate::typed::Choice;

pub(super) const DECISIONS: &[&str] = &["accept", "adjust", "stop"];

const WORST: &str = "The worst of them all: one stop stops the machine, one adjust keeps it from being accepted.";
const ZONES: Source = Source::FromMemory("ISO 20816-1, meaning of the zones");

/// The decision a verdict gives, counted as [`DECISIONS`].
pub(super) fn verdict(decision: Choice) -> Verdict {
    match decision.0 {
        0 => Verdict::Accept,
        1 => Verdict::Adjust,
        _ => Verdict::Stop,
    }
}

pub(super) fn closed(decision: Choice) -> Finding {
    Finding { verdict: verdict(decision), safety_critical: false, open: false }
}

/// The guards as a finding: people depend on them, and a missing one is open.
pub(super) fn guards(state: Choice) -> Finding {
    Finding { verdict: Verdict::Accept, safety_critical: true, open: state.0 != 0 }
}

fn told(verdict: Verdict) -> Choice {
    Choice(verdict as u16)
}

fn worst<const N: usize>(decisions: [Choice; N]) -> Result<Choice, Error> {
    whole_machine(&decisions.map(closed)).map(told)
}

fn worst_and_guards<const N: usize>(decisions: [Choice; N], guard: Choice) -> Result<Choice, Error> {
    let mut findings = decisions.map(closed).to_vec();
    findings.push(guards(guard));
    whole_machine(&findings).map(told)
}

fn best<const N: usize>(decisions: [Choice; N]) -> Choice {
    Choice(decisions.iter().map(|decision| decision.0).min().unwrap_or(0))
}

/// What most of them say.
fn most<const N: usize>(decisions: [Choice; N]) -> Choice {
    let count = |which: u16| decisions.iter().filter(|decision| decision.0 == which).count();
    Choice((0..3).rev().max_by_key(|which| count(*which)).unwrap_or(0))
}

/// Adjusts added up: two of them taken for a stop.
fn added<const N: usize>(decisions: [Choice; N]) -> Choice {
    Choice(decisions.iter().map(|decision| decision.0).sum::<u16>().min(2))
}

/// One step worse, and not past stop.
fn harsher(decision: Result<Choice, Error>) -> Result<Choice, Error> {
    decision.map(|decision| Choice(if decision.0 == 0 { 0 } else { 2 }))
}

/// One step milder where there was something to do.
fn milder(decision: Result<Choice, Error>) -> Result<Choice, Error> {
    decision.map(|decision| Choice(decision.0.saturating_sub(1)))
}

/// Accept for the first choice of a verdict, adjust for any other.
fn adjust_unless_first(verdict: Choice) -> Choice {
    Choice(u16::from(verdict.0 != 0))
}

/// Accept for the first choice of a verdict, stop for any other.
fn stop_unless_first(verdict: Choice) -> Choice {
    Choice(if verdict.0 == 0 { 0 } else { 2 })
}

/// The worst of verdicts that stop and of verdicts that adjust, wherever they are not the first of their choices.
fn weighed<const N: usize, const M: usize>(stopping: [Choice; N], adjusting: [Choice; M]) -> Choice {
    let found = stopping.map(stop_unless_first).into_iter().chain(adjusting.map(adjust_unless_first));
    Choice(found.map(|decision| decision.0).max().unwrap_or(0))
}

/// Between the marks, low, overfull: gears and bearings that the oil does not reach must not run.
fn level(verdict: Choice) -> Choice {
    Choice(match verdict.0 {
        0 => 0,
        1 => 2,
        _ => 1,
    })
}

/// Too tight, within the window, too slack.
fn sag(verdict: Choice) -> Choice {
    Choice(u16::from(verdict.0 != 1))
}

fn zone(zone: Choice) -> Choice {
    told(of_zone(match zone.0 {
        0 => Zone::A,
        1 => Zone::B,
        2 => Zone::C,
        _ => Zone::D,
    }))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "follow.base/worst": "Decision on the base",
        "follow.base": Choice = worst([adjust_unless_first(gap), adjust_unless_first(slope)]),
        from { gap: Choice = "mount.gap_verdict", slope: Choice = "mount.level_verdict" },
        formula [],
        source CommonPractice,
        turns {
            "soft foot let pass": adjust_unless_first(slope) => "You let the soft foot pass; bolts pulled down on it bend the housing, so it is shimmed or machined first.";
            "level let pass": adjust_unless_first(gap) => "You let the slope pass; the oil marks mean nothing on a base that is out of level.";
            "stopped": harsher(worst([adjust_unless_first(gap), adjust_unless_first(slope)])) => "You stopped the machine for it; this is put right and checked again, which is what adjust says.";
        },
    }
    .method("Gap within the limit and base level enough: accept. Otherwise adjust."),
    relation! {
        "follow.oil/worst": "Decision on the oil",
        "follow.oil": Choice = worst([level(height), adjust_unless_first(grade), adjust_unless_first(vent)]),
        from {
            height: Choice = "oil.level_verdict", grade: Choice = "oil.grade_verdict",
            vent: Choice = "oil.breather_verdict",
        },
        formula [],
        source CommonPractice,
        turns {
            "low oil run on": worst([adjust_unless_first(height), adjust_unless_first(grade), adjust_unless_first(vent)]) => "You let it run with too little oil; what the oil does not reach is ruined in minutes, so low is stop.";
            "grade let pass": worst([level(height), adjust_unless_first(vent)]) => "You let the wrong oil pass because the level is right; the grade is a finding of its own.";
            "breather let pass": worst([level(height), adjust_unless_first(grade)]) => "You let the blocked breather pass; the pressure behind it pushes the oil out past the seals.";
            "level alone": level(height) => "You went by the level alone; grade and breather count as well.";
            "overfull stopped": worst([stop_unless_first(height), adjust_unless_first(grade), adjust_unless_first(vent)]) => "You stopped it for being overfull; too much oil runs hot, and draining it is an adjustment.";
        },
    }
    .method("Oil low: stop. Overfull, another grade than the plate's, or a blocked breather: adjust. Otherwise accept."),
    relation! {
        "follow.chain/worst": "Decision on the chain",
        "follow.chain": Choice = worst([sag(slack), adjust_unless_first(wear)]),
        from { slack: Choice = "chain.sag_verdict", wear: Choice = "chain.wear_verdict" },
        formula [],
        source CommonPractice,
        turns {
            "tight let pass": worst([Choice(u16::from(slack.0 == 2)), adjust_unless_first(wear)]) => "You let the tight chain pass; a tight chain wears itself, the sprockets and the bearings.";
            "slack let pass": worst([Choice(u16::from(slack.0 == 0)), adjust_unless_first(wear)]) => "You let the slack chain pass; it whips and jumps teeth.";
            "wear let pass": sag(slack) => "You let the worn chain pass because its sag is right; wear past the limit means a new chain.";
            "stopped": harsher(worst([sag(slack), adjust_unless_first(wear)])) => "You stopped the machine for it; setting or replacing the chain is an adjustment.";
        },
    }
    .method("Movement within the window and wear within the limit: accept. Otherwise adjust: set the chain, or fit a new one."),
    relation! {
        "follow.load/verdict": "Decision on the shaft load",
        "follow.load": Choice = told(verdict(v)),
        from { v: Choice = "load.verdict" },
        formula [],
        source CommonPractice,
        turns {
            "run on": milder(Ok(v)) => "You were one step too mild; a load over the rating bends the shaft and wears the bearings on every turn.";
            "stopped": harsher(Ok(v)) => "You stopped the machine although moving the sprocket in is enough.";
        },
    }
    .method("Accept stays accept; move the sprocket in is adjust; overloaded is stop."),
    relation! {
        "follow.lie/worst": "Decision on the alignment",
        "follow.lie": Choice = worst([sprockets, upright, level].map(adjust_unless_first)),
        from {
            sprockets: Choice = "align.sprocket_verdict", upright: Choice = "align.verdict_v",
            level: Choice = "align.verdict_h",
        },
        formula [],
        source CommonPractice,
        turns {
            "sprockets let pass": worst([upright, level].map(adjust_unless_first)) => "You let the sprockets pass; a chain between sprockets out of line wears its side plates from the first hour.";
            "coupling let pass": adjust_unless_first(sprockets) => "You looked at the sprockets alone; the motor has to be in line with the reducer as well.";
            "one plane only": worst([sprockets, upright].map(adjust_unless_first)) => "You let the horizontal alignment pass; shafts must be in line both ways.";
            "stopped": worst([sprockets, upright, level].map(stop_unless_first)) => "You stopped the machine for it; aligning is an adjustment.";
        },
    }
    .method("Sprockets, and motor to reducer upright and sideways, all within their limits: accept. Otherwise adjust."),
    relation! {
        "follow.bolts/worst": "Decision on bolts, key and bushing",
        "follow.bolts": Choice = weighed([bolt, key, bushing], [base, screws]),
        from {
            bolt: Choice = "fasten.bolt_verdict", key: Choice = "fasten.key_verdict",
            bushing: Choice = "fasten.gap_verdict", base: Choice = "fasten.base_verdict",
            screws: Choice = "fasten.screw_verdict",
        },
        formula [],
        source CommonPractice,
        turns {
            "adjusted": worst([bolt, key, bushing, base, screws].map(adjust_unless_first)) => "You called it an adjustment; what may let go while it turns can hurt people, so the machine stays stopped until it is right.";
            "bolt alone": stop_unless_first(bolt) => "You went by the bolt alone; key and bushing can let go as well.";
            "key let pass": weighed([bolt, bushing], [base, screws]) => "You let the short key pass.";
            "bushing let pass": weighed([bolt, key], [base, screws]) => "You let the bushing pass; with its flange on the hub the taper does not grip.";
            "recheck let pass": weighed([bolt, key, bushing], []) => "You let the recheck pass; bolts and screws that have lost torque are tightened again before the machine is accepted.";
            "recheck stopped": weighed([bolt, key, bushing, base, screws], []) => "You stopped the machine because bolts or screws have lost some torque; they are tightened again, which is adjust.";
        },
    }
    .method("A bolt outside its limits, a key too short, or a bushing whose taper does not grip: stop. Base bolts or bushing screws to be tightened again: adjust. Otherwise accept."),
    relation! {
        "follow.heat/verdict": "Decision on the temperature",
        "follow.heat": Choice = told(verdict(v)),
        from { v: Choice = "heat.verdict" },
        formula [],
        source CommonPractice,
        turns {
            "run on": milder(Ok(v)) => "You were one step too mild; heat that should not be there has a cause, and it is looked for.";
            "stopped": harsher(Ok(v)) => "You stopped the machine although it is inside the limit for any day; look for the cause, which is adjust.";
        },
    }
    .method("Acceptable: accept. Not passed, find the cause: adjust, and it is read again before it is accepted. Stop and find out why: stop."),
    relation! {
        "follow.vibration/zone": "Decision on the vibration",
        "follow.vibration": Choice = zone(z),
        from { z: Choice = "vibrate.zone" },
        formula [],
        source ZONES,
        turns {
            "one zone worse": zone(Choice(z.0 + 1)) => "You were one zone too strict; B is fit for long running, C for a limited time.";
            "one zone better": zone(Choice(z.0.saturating_sub(1))) => "You were one zone too mild; C calls for a remedy, and D can do damage.";
        },
    }
    .method("Zones A and B: accept. C: adjust. D: stop."),
    relation! {
        "follow.motor/worst": "Decision on the motor and its supply",
        "follow.motor": Choice = weighed([current, way], [volts, unequal]),
        from {
            current: Choice = "start.current_verdict", way: Choice = "start.rotation_verdict",
            volts: Choice = "start.voltage_verdict", unequal: Choice = "start.unbalance_verdict",
        },
        formula [],
        source CommonPractice,
        turns {
            "overload run on": weighed([way], [current, volts, unequal]) => "You let an overloaded motor run on; it burns, or its protection trips with the load hanging.";
            "wrong way run on": weighed([current], [way, volts, unequal]) => "You let it run the wrong way round; that can wreck backstop, pump and load, so it is stop.";
            "supply let pass": weighed([current, way], []) => "You let the supply pass; a few per cent of unbalance heats one winding far more than the load does.";
            "unbalance let pass": weighed([current, way], [volts]) => "You looked at the mean voltage alone; the three lines must be alike as well.";
            "stopped": weighed([current, way, volts, unequal], []) => "You stopped the machine for its supply alone; have it put right by those who may, which is adjust.";
        },
    }
    .method("Overloaded or turning the wrong way: stop. Voltage too far off or too unequal: adjust. Otherwise accept."),
    relation! {
        "follow.standstill/every check": "Decision on the checks at standstill",
        "follow.standstill": Choice = worst_and_guards([base, oil, chain, load, lie, bolts], guard),
        from {
            base: Choice = "follow.base", oil: Choice = "follow.oil", chain: Choice = "follow.chain",
            load: Choice = "follow.load", lie: Choice = "follow.lie", bolts: Choice = "follow.bolts",
            guard: Choice = "start.guards",
        },
        formula [],
        source CommonPractice,
        turns {
            "most of them": most([base, oil, chain, load, lie, bolts]) => "You went by what most checks say; good checks do not outvote a bad one.";
            "best": best([base, oil, chain, load, lie, bolts]) => "You went by the best check; the worst one decides.";
            "added up": added([base, oil, chain, load, lie, bolts]) => "You made a stop out of several adjusts; each of them is put right, and none of them stops the machine.";
            "guard forgotten": worst([base, oil, chain, load, lie, bolts]) => "You forgot the guards; without them the machine does not run, whatever the checks say.";
        },
    }
    .method(WORST),
    relation! {
        "follow.standstill/without alignment and bolts": "Decision on the checks at standstill, alignment and bolts apart",
        "follow.standstill": Choice = worst_and_guards([base, oil, chain, load], guard),
        from {
            base: Choice = "follow.base", oil: Choice = "follow.oil", chain: Choice = "follow.chain",
            load: Choice = "follow.load", guard: Choice = "start.guards",
        },
        formula [],
        source CommonPractice,
        turns {
            "most of them": most([base, oil, chain, load]) => "You went by what most checks say; good checks do not outvote a bad one.";
            "best": best([base, oil, chain, load]) => "You went by the best check; the worst one decides.";
            "added up": added([base, oil, chain, load]) => "You made a stop out of several adjusts; each of them is put right, and none of them stops the machine.";
            "guard forgotten": worst([base, oil, chain, load]) => "You forgot the guards; without them the machine does not run, whatever the checks say.";
        },
    }
    .method(WORST)
    .limits("alignment, bolts, key and bushing are checked as well before anybody signs")
    .rank(5),
    relation! {
        "follow.running/every reading": "Decision on the readings while running",
        "follow.running": Choice = worst([heat, shake, motor]),
        from { heat: Choice = "follow.heat", shake: Choice = "follow.vibration", motor: Choice = "follow.motor" },
        formula [],
        source CommonPractice,
        turns {
            "most of them": most([heat, shake, motor]) => "You went by what most readings say; good readings do not outvote a bad one.";
            "best": best([heat, shake, motor]) => "You went by the best reading; the worst one decides.";
            "added up": added([heat, shake, motor]) => "You made a stop out of several adjusts; none of them stops the machine.";
        },
    }
    .method(WORST),
    relation! {
        "follow.running/temperature and vibration": "Decision on temperature and vibration",
        "follow.running": Choice = worst([heat, shake]),
        from { heat: Choice = "follow.heat", shake: Choice = "follow.vibration" },
        formula [],
        source CommonPractice,
        turns {
            "temperature alone": heat => "You went by the temperature alone; the vibration counts as well.";
            "vibration alone": shake => "You went by the vibration alone; the temperature counts as well.";
            "added up": added([heat, shake]) => "You made a stop out of two adjusts; none of them stops the machine.";
        },
    }
    .method(WORST)
    .limits("the motor's current is read as well before anybody signs")
    .rank(5),
    relation! {
        "follow.running/temperature": "Decision on the temperature alone",
        "follow.running": Choice = worst([heat]),
        from { heat: Choice = "follow.heat" },
        formula [],
        source CommonPractice,
        turns {
            "milder": milder(Ok(heat)) => "You made the decision on the temperature one step milder; nothing speaks for that.";
        },
    }
    .method("With no other reading to judge, the decision on the temperature stands for all of them.")
    .limits("vibration and the motor's current are read as well before anybody signs")
    .rank(6),
    relation! {
        "follow.decision/worst": "Decision on the whole machine",
        "follow.decision": Choice = worst([still, run]),
        from { still: Choice = "follow.standstill", run: Choice = "follow.running" },
        formula [],
        source CommonPractice,
        turns {
            "best": best([still, run]) => "You went by the better of the two; the worse one decides.";
            "added up": added([still, run]) => "You made a stop out of two adjusts; each of them is put right, and none of them stops the machine.";
            "it runs well": run => "You let good running outweigh what was found at standstill; it runs well until it fails.";
            "standstill alone": still => "You went by the checks at standstill alone; what the running machine shows counts as well.";
            "one step milder": milder(worst([still, run])) => "You took the sting out of the worst finding; it stands as it is.";
        },
    }
    .method(WORST),
];
