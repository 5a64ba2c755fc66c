//! Judgements: diagnosis, the odd one out, accept, adjust or stop.

use super::*;

/// What the items on decisions look for.
fn findings(item: &Item) -> impl Iterator<Item = &Finding> {
    item.parts.iter().flat_map(|part| match &part.ask {
        Ask::Judge(Judge::Decide { findings, .. }) => &findings[..],
        _ => &[],
    })
}

/// Settings of the items that ask for a judgement of this kind.
fn judging<'b>(bank: &'b Bank, plan: &Plan, kind: fn(&Judge) -> bool) -> Vec<Setting<'b>> {
    let asks = |item: &Item| item.parts.iter().any(|part| matches!(&part.ask, Ask::Judge(judge) if kind(judge)));
    let both = System::ALL.into_iter();
    let settings: Vec<_> = both
        .flat_map(|system| bank.settings(system, |item, other| asks(item) && other.family.id == plan.family.id))
        .collect();
    assert!(settings.len() >= 6, "{} has only {}", plan.family.id, settings.len());
    settings
}

/// The statements of the first part, the right one's place, and what speaks against each.
fn statements(question: &Question) -> (&[String], usize, &[String]) {
    match &question.parts[0].body {
        Body::Pick { shown, right, against, .. } => {
            assert!(against.iter().enumerate().all(|(place, says)| says.is_empty() == (place == *right)));
            let different: std::collections::BTreeSet<&String> = shown.iter().collect();
            assert_eq!(different.len(), shown.len(), "{shown:?}");
            (shown, *right, against)
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_sound_machine_is_never_called_faulty_and_one_that_must_stop_never_acceptable() {
    for_every_family(|bank, plan| {
        let all: Vec<&Finding> = bank.items.iter().flat_map(findings).collect();
        let holds = |case: &Case, finding: &Finding| case.values[finding.on.index()] == finding.when as f64;
        for seed in 0..seeds() {
            let sound = plan.draw_with(seed, Some(&[])).unwrap();
            for finding in &all {
                assert!(!holds(&sound, finding), "{} seed {seed}: {}", plan.family.id, finding.reason);
            }
        }
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Decide { .. }));
        let (mut stopped, mut places) = (0, [0; 3]);
        for seed in 0..seeds() {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let (shown, right, _) = statements(&question);
            let call =
                findings(setting.item).filter(|finding| holds(&question.case, finding)).map(|finding| finding.call);
            let word = match call.max() {
                None => "Accept",
                Some(Call::Stop) => "Stop",
                Some(_) => "Adjust",
            };
            assert!(shown[right].starts_with(word), "{} seed {seed}: {}", setting.item.id, shown[right]);
            assert!(word == "Accept" || !question.case.faults.is_empty(), "a sound machine is called faulty");
            places[right] += 1;
            if word == "Stop" {
                stopped += 1;
                let accept = shown.iter().position(|option| option.starts_with("Accept")).unwrap();
                let letter = drivecourse_quiz::letter(accept).to_string();
                let mark = &mark(&question, &[&letter])[0];
                assert_eq!(cause_name(&mark.causes[0]), "stop called accept");
                assert_eq!(mark.earned, 0);
            }
        }
        assert!(stopped as u64 > seeds() / 20, "{stopped} of {} must stop", seeds());
        assert!(places.iter().all(|count| *count as u64 > seeds() / 5), "{places:?}: the order varies with the seed");
    });
}

#[test]
fn a_diagnosis_leaves_the_fault_that_is_there() {
    for_every_family(|bank, plan| {
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Diagnose { .. }));
        let mut places = [0; 5];
        for seed in 0..seeds() / 10 {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let (shown, right, against) = statements(&question);
            let wanted = match question.case.faults[..] {
                [] => "nothing is wrong".to_owned(),
                [fault] => plan.family.faults[fault].name.to_lowercase(),
                _ => panic!("two faults"),
            };
            assert_eq!(shown[right].to_lowercase(), wanted, "{} seed {seed}", setting.item.id);
            assert!((3..=5).contains(&shown.len()) && shown.iter().any(|option| option == "Nothing is wrong"));
            assert!(against.iter().all(|says| says.is_empty() || says.contains("; here it")), "{against:?}");
            places[right] += 1;
        }
        assert!(places[..3].iter().all(|count| *count > 0), "{places:?}");
    });
}

#[test]
fn the_odd_one_out_is_the_number_that_was_changed() {
    for_every_family(|bank, plan| {
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Odd { .. }));
        for seed in 0..seeds() / 20 {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let (shown, right, _) = statements(&question);
            let part = &question.parts[0];
            let name = shown[right].split_once(": ").unwrap().0.to_lowercase();
            let is_odd = |id: QuantityId| id.get().name.to_lowercase() == name;
            let (odd, value) = *part.givens.iter().find(|(id, _)| is_odd(*id)).unwrap();
            assert_ne!(question.shown(odd), value, "{} seed {seed}", setting.item.id);
            let written = amount::write(odd.get(), value, question.system);
            assert!(shown[right].ends_with(&written), "{} {written}", shown[right]);
            for (id, value) in part.givens.iter().filter(|(id, _)| *id != odd) {
                // What is worked out is worked out of the readings as they stand there, not of what these round away.
                let own = question.shown(*id);
                let rounded_away = if id.get().known == Known::Worked { 0.2 * own.abs() } else { 0.0 };
                let off = (value - own).abs();
                assert!(off <= rounded_away, "{} seed {seed}: {}: {value}, not {own}", setting.item.id, id.get().id);
            }
        }
    });
}

/// The number in a grade's label.
fn grade(label: &str) -> Option<f64> {
    label.rsplit(' ').next()?.parse().ok()
}

/// Whether what `reason` claims is so on the machine `case`. A new reason is written here too.
fn is_so(reason: &str, case: &Case) -> bool {
    let value = |name: &str| case.values[find(name).index()];
    let plate = || grade(find("oil.plate_grade").get().choices[value("oil.plate_grade") as usize]).unwrap() * 1e-6;
    match reason {
        "A foot hangs clear by more than is allowed" => value("mount.gap") > value("mount.gap_limit"),
        "The base stands out of level, and the oil level with it" => {
            value("mount.level").abs() > value("mount.level_limit")
        }
        "The chain is too tight, and the bearings carry its pull" | "The chain is too tight" => {
            value("chain.movement_share") < value("chain.movement_low")
        }
        "The chain is too slack and may whip or climb the teeth" | "The chain is too slack" => {
            value("chain.movement_share") > value("chain.movement_high")
        }
        "The chain is worn past its limit and may jump the teeth" => value("chain.wear") >= value("chain.wear_limit"),
        "The rise over ambient is above its limit" => {
            value("heat.housing") - value("heat.ambient") > value("heat.rise_limit")
        }
        "The housing is above the limit for any day" => value("heat.housing") > value("heat.sump_limit"),
        "The sprocket sits too far out for this load, and there is room to move it in" => {
            value("load.total") > value("load.allowable") && value("load.total") <= value("load.rating_middle")
        }
        // Nearer in than the middle the shaft end bears more than its rating.
        "The load is more than the shaft end bears anywhere" => {
            value("load.total") > value("load.rating_middle").max(value("load.allowable"))
        }
        "The oil stands below the low mark: gears or bearings would start dry" => {
            value("oil.cold_level") < value("oil.low_mark")
        }
        "The oil stands above the high mark and would churn itself hot" => {
            value("oil.cold_level") > value("oil.high_mark")
        }
        "The oil is too thin to keep the teeth apart" => value("oil.sample_40") < 0.9 * plate() && in_a_grade(case),
        "The oil is thicker than the plate asks for" => value("oil.sample_40") > 1.1 * plate() && in_a_grade(case),
        "The oil belongs to no grade: two kinds were mixed" => !in_a_grade(case),
        other => panic!("what does {other:?} claim of a machine?"),
    }
}

/// Whether the sample lies within 10 % of the number of some grade.
fn in_a_grade(case: &Case) -> bool {
    let sample = case.values[find("oil.sample_40").index()] * 1e6;
    let mut grades = find("oil.plate_grade").get().choices.iter().filter_map(|label| grade(label));
    grades.any(|grade| (0.9 * grade..=1.1 * grade).contains(&sample))
}

/// The reasons given are true of the machine, and no reason as grave as they are is left unsaid.
#[test]
fn reasons_follow_the_numbers() {
    for_every_family(|bank, plan| {
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Decide { .. }));
        let mut given = std::collections::BTreeSet::new();
        for seed in 0..seeds() / 5 {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let Body::Pick { shown, right, because, .. } = &question.parts[0].body else { panic!("no choice") };
            let call =
                Call::ALL.into_iter().find(|call| shown[*right].to_lowercase().starts_with(call.word())).unwrap();
            for finding in findings(setting.item).filter(|finding| finding.call >= call) {
                let says = because.contains(&finding.reason);
                let about = format!("{} {} seed {seed}: {}", setting.item.id, plan.family.id, finding.reason);
                assert_eq!(says, is_so(&finding.reason, &question.case), "{about}");
                if says {
                    given.insert(finding.reason.as_str());
                }
            }
            let all_well = because.starts_with("Every value shown keeps its limit");
            assert_eq!(all_well, call == Call::Accept, "{because}");
        }
        assert!(seeds() < 1_000 || given.len() >= 8, "{} gives {given:?}", plan.family.id);
    });
}
