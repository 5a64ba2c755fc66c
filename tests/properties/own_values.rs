//! Values that a plant states itself: no key says otherwise, and no source stands beside a value that is not its own.

use drivecourse_quiz::{Key, Unsettled};

use super::*;

/// A conveyor with a window of its own and shocks, of which the rule for all drives would have 2 to 3 %.
fn plant(movement_high: &str) -> String {
    format!(
        "name = \"log haul\"\nabout = \"It hauls logs.\"\nlike = \"quarry-conveyor\"\n[fixed]\n\
         \"chain.load_comes\" = \"shocks or reverses\"\n\
         \"chain.sag_share_wanted\" = {{ value = \"1.2 %\", source = \"plant standard 4.1\" }}\n\
         \"chain.movement_low\" = {{ value = \"2 %\", source = \"plant standard 4.1\" }}\n\
         \"chain.movement_high\" = {{ value = \"{movement_high}\", source = \"plant standard 4.1\" }}\n"
    )
}

fn with_plant(movement_high: &str) -> Bank {
    bank_with(&[("families/log-haul.toml", &plant(movement_high))])
}

/// Settings about the plant's own family.
fn its_own(bank: &Bank) -> Vec<Setting<'_>> {
    bank.settings(System::Si, |_, plan| plan.family.id == "log-haul")
}

#[test]
fn what_the_plant_states_is_not_asked_by_another_rule() {
    let is_asked = |bank: &Bank| its_own(bank).iter().any(|setting| setting.item.id == "window-on-the-scale");
    assert!(is_asked(&with_plant("3 %")), "the rule and the plant agree");
    let bank = with_plant("3.5 %");
    assert!(!is_asked(&bank), "the rule says 3 %, the plant 3.5 %");
    let plan = bank.plans.iter().find(|plan| plan.family.id == "log-haul").unwrap();
    let item = bank.items.iter().find(|item| item.id == "window-on-the-scale").unwrap();
    let Err(Unsettled::NoMachine(why)) = Setting::new(item, plan, System::Us) else { panic!("it is asked") };
    let why = why.replace('\u{a0}', " ");
    assert!(why.contains("chain.movement_high is 3.5 %") && why.contains("part 2 would have 3.0 %"), "{why}");
    // A sheet with another window than this plant's is no sheet of it.
    assert!(its_own(&bank).iter().all(|setting| setting.item.id != "which-sag-reading"));
}

/// A plant with stiff base frames allows so little that some of its angled feet count as bent or dirty. Nobody is asked to
/// work out a wedge there: the foot is cleaned and mended first.
#[test]
fn a_wedge_is_asked_only_where_the_plants_own_limit_finds_one() {
    let family = "name = \"log haul\"\nabout = \"It hauls logs.\"\nlike = \"quarry-conveyor\"\n[fixed]\n\
                  \"mount.gap_limit\" = { value = \"0.03 mm\", source = \"plant standard 4.2\" }\n[draw]\n\
                  \"mount.corner_residual\" = { between = [\"-0.015 mm\", \"0.015 mm\"] }\n";
    let bank = bank_with(&[("families/log-haul.toml", family)]);
    let plan = bank.plans.iter().find(|plan| plan.family.id == "log-haul").unwrap();
    let fit = find("mount.foot_fit");
    let fits = |case: &Case| fit.get().choices[case.values[fit.index()] as usize];
    let angled = plan.family.faults.iter().position(|fault| fault.id == "angled-foot").unwrap();
    let drawn: Vec<_> = (0..40).map(|seed| plan.draw_with(seed, Some(&[angled])).unwrap()).collect();
    for wanted in ["wedge", "bent foot or dirt"] {
        assert!(drawn.iter().filter(|case| fits(case) == wanted).count() > 5, "{wanted}");
    }
    for id in ["foot-mean", "foot-slopes", "wedge"] {
        let item = bank.items.iter().find(|item| item.id == id).unwrap();
        for system in System::ALL {
            let setting = Setting::new(item, plan, system).unwrap();
            for seed in 0..40 {
                assert_eq!(fits(&setting.question(seed).unwrap().case), "wedge", "{id} {system:?} {seed}");
            }
        }
    }
}

/// Over every family and the plant's own: what is fixed or stands in the table of machines is right where it is asked.
#[test]
fn no_key_contradicts_what_a_family_says() {
    let bank = with_plant("3.5 %");
    let mut asked = 0;
    for setting in bank.settings(System::Si, |_, _| true) {
        let family = &setting.plan.family;
        let fixed = family.roots.iter().filter(|(_, draw)| matches!(draw, drivecourse_machine::Draw::Fixed(_)));
        let tabled = family.pool.iter().take(1).flatten().map(|(id, _)| *id);
        let says = fixed.map(|(id, _)| *id).chain(tabled);
        let says: Vec<QuantityId> = says.filter(|id| id.get().known == Known::Plate).collect();
        for seed in 0..3 {
            let Ok(question) = setting.question(seed) else { continue };
            for key in question.parts.iter().filter_map(|part| part.key()) {
                let gives = key.path.steps.iter().map(|step| step.get().gives).filter(|gives| says.contains(gives));
                for gives in gives {
                    let (found, own) = (key.values[gives.index()], question.case.values[gives.index()]);
                    let about = format!("{} {} {seed}: {}", setting.item.id, family.id, gives.get().id);
                    if gives == key.path.asked {
                        assert!((found - own).abs() <= key.tolerance + 1e-9 * own.abs(), "{about}: {found} for {own}");
                        asked += 1;
                    } else {
                        assert!((found - own).abs() <= 0.02 * own.abs(), "{about}: {found} for {own}");
                    }
                }
            }
        }
    }
    assert!(asked > 40, "{asked} asked");
}

#[test]
fn the_plants_source_stands_beside_its_own_values_alone() {
    let bank = with_plant("3.5 %");
    let mut claims = 0;
    for setting in its_own(&bank) {
        for seed in 0..5 {
            let Ok(question) = setting.question(seed) else { continue };
            for key in question.parts.iter().filter_map(|part| part.key()) {
                for line in question.working(key).lines {
                    for own in &line.own {
                        let stated = setting.plan.family.stated.iter().any(|stated| {
                            let own_value = setting.plan.family.roots.iter().find(|(id, _)| *id == stated.quantity);
                            let Some((id, drivecourse_machine::Draw::Fixed(value))) = own_value else { return false };
                            own.contains(&amount::write(id.get(), *value, System::Si)) && own.contains(id.get().name)
                        });
                        assert!(stated, "{}: {own}", setting.item.id);
                        claims += 1;
                    }
                }
            }
        }
    }
    assert!(claims > 20, "{claims}");
}

/// A step that works with another value than the plant's does not claim the plant's source.
#[test]
fn a_step_with_another_value_names_no_source() {
    let bank = with_plant("3.5 %");
    let setting = its_own(&bank).into_iter().find(|setting| setting.item.id == "sag-to-movement").unwrap();
    let question = setting.question(1).unwrap();
    let part = question.parts.iter().find(|part| part.asked() == Some(find("chain.sag_verdict"))).unwrap();
    let key = part.key().unwrap();
    let own = |values: &[f64]| question.working(&Key { values: values.to_vec(), ..key.clone() }).lines[0].own.len();
    assert_eq!(own(&key.values), 2, "both ends of the window are the plant's");
    let mut other = key.values.clone();
    other[find("chain.movement_high").index()] = 0.03;
    assert_eq!(own(&other), 1, "3 % is not the plant's");
}

/// Nobody took a number that is nowhere to be seen: such a wrong turn is foreseen only where the question shows it.
#[test]
fn a_wrong_turn_needs_nothing_that_is_not_shown() {
    let item = |also: &str| {
        format!(
            "[[item]]\nid = \"own-growth\"\ntopic = \"chain\"\nskill = \"x\"\ntitle = \"Own\"\ntext = \"The {{machine}}.\"\n\
             [[item.part]]\ntext = \"By how much has the whole chain grown?\"\nask = \"chain.wear_growth\"\n\
             from = [\"chain.wear\", \"chain.links\", \"chain.pitch\"]\nalso = [{also}]\n"
        )
    };
    let says = |also: &str| {
        let bank = bank_with(&[("items/own.toml", &item(also))]);
        let settings = bank.settings(System::Si, |item, _| item.id == "own-growth");
        let questions = settings.iter().filter_map(|setting| setting.question(1).ok());
        let parts: Vec<_> = questions.flat_map(|question| question.parts).collect();
        assert!(!parts.is_empty());
        parts.iter().any(|part| match &part.body {
            Body::Quantity { predicted, .. } => {
                predicted.iter().any(|wrong| cause_name(&wrong.cause).contains("measured part"))
            }
            _ => false,
        })
    };
    assert!(!says(""), "the pitches measured over are not on the paper");
    assert!(says("\"chain.wear_pitches\""), "they are on it");
}
