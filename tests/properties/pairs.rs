//! What papers and keys print beside a question: values in both units, wrong turns.

use drivecourse_course::card::{Sheet, key_model, paper_model};
use drivecourse_course::pages::model::{Given, Head};

use super::*;

fn head() -> Head {
    Head { plant: String::new(), exam: "x".into(), candidate: "x".into(), code: "x".into(), date: None }
}

fn givens(item: &Item, question: &Question) -> Vec<Given> {
    let paper = paper_model(head(), &[Sheet { item, question, family: "x" }], None, Vec::new(), Vec::new()).unwrap();
    paper.questions.into_iter().next().unwrap().givens
}

/// One limit, one pair, whichever units the paper is in; and a number worked out from either side of it is right. (A
/// verdict on a reading right on the limit goes by the side that the source states.)
#[test]
fn a_limit_is_printed_as_one_pair_and_either_side_of_it_will_do() {
    let bank = bank();
    let mut pairs: BTreeMap<String, std::collections::BTreeSet<(String, String)>> = BTreeMap::new();
    let mut tried = 0;
    for system in System::ALL {
        for setting in bank.settings(system, |item, _| item.topic == "heat") {
            for seed in 0..40 {
                let question = setting.question(seed).unwrap();
                let given = givens(setting.item, &question);
                for limit in ["heat.rise_limit", "heat.sump_limit"] {
                    let quantity = find(limit).get();
                    let Some(given) =
                        given.iter().find(|given| given.name.to_lowercase() == quantity.name.to_lowercase())
                    else {
                        continue;
                    };
                    let also = given.also.clone().unwrap();
                    let (si, us) = match system {
                        System::Si => (given.value.clone(), also.clone()),
                        System::Us => (also.clone(), given.value.clone()),
                    };
                    let family = format!("{limit} {}", question.family);
                    pairs.entry(family).or_default().insert((si.replace('\u{a0}', " "), us.replace('\u{a0}', " ")));
                    let read = amount::read(&also, &amount::Wanted::new(quantity.kind)).unwrap().base;
                    for part in &question.parts {
                        let Some(key) =
                            part.key().filter(|key| key.tolerance > 0.0 && key.path.uses().contains(&find(limit)))
                        else {
                            continue;
                        };
                        let mut values = key.values.clone();
                        values[find(limit).index()] = read;
                        let value = key.path.run(&mut values).unwrap();
                        assert!(
                            (value - key.value).abs() <= key.tolerance,
                            "{} seed {seed} {system:?}: {value} by {also}, but {} ± {}",
                            setting.item.id,
                            key.value,
                            key.tolerance
                        );
                        tried += 1;
                    }
                }
            }
        }
    }
    assert!(tried > 100 && pairs.len() >= 2, "{tried} answers rest on a limit");
    for (limit, pairs) in &pairs {
        assert_eq!(pairs.len(), 1, "{limit} is printed as {pairs:?}");
        let (si, us) = pairs.first().unwrap();
        let wanted = if limit.starts_with("heat.rise") { ("56 °C", "100 °F") } else { ("93 °C", "200 °F") };
        assert_eq!((si.as_str(), us.as_str()), wanted);
    }
}

/// Only some of many wrong turns are listed: those of the item's author are among them.
#[test]
fn own_wrong_turns_are_never_cut_from_the_key() {
    let file = r#"
[[item]]
id = "own"
topic = "chain"
skill = "x"
title = "Own"
text = "The {machine}."

[[item.part]]
text = "How hard does the slack strand pull?"
ask = "chain.slack_tension"
from = ["chain.mass", "chain.span", "chain.sag", "chain.strand_incline"]
wrong = [{ gives = "chain.slack_tension * 5", says = "You took it five times." }]
"#;
    let bank = bank_with(&[("items/own.toml", file)]);
    let settings = bank.settings(System::Si, |item, _| item.id == "own");
    for setting in &settings {
        for seed in 0..20 {
            let question = setting.question(seed).unwrap();
            let key =
                key_model(head(), &[Sheet { item: setting.item, question: &question, family: "x" }], String::new());
            let turns = &key.questions[0].parts[0].wrong_turns;
            assert!(turns.len() == 6, "there are more than are listed");
            assert!(turns.iter().any(|turn| turn.sentence.contains("five times")), "{turns:?}");
        }
    }
    assert!(!settings.is_empty());
}

/// The mean of two temperatures is one temperature, in whichever units the paper is and the expression is written.
#[test]
fn an_own_mean_of_temperatures_is_recognised_in_both_units() {
    for gives in [
        "(heat.ambient + heat.sump_limit) / 2",
        "heat.ambient / 2 + 0.5 * heat.sump_limit",
        "[°C] = (heat.ambient[°C] + heat.sump_limit[°C]) / 2",
        "[°F] = (heat.ambient[°F] + heat.sump_limit[°F]) / 2",
    ] {
        let file = format!(
            "[[item]]\nid = \"own-mean\"\ntopic = \"heat\"\nskill = \"x\"\ntitle = \"Own\"\ntext = \"The {{machine}}.\"\n\
             [[item.part]]\ntext = \"How hot may it get?\"\nask = \"heat.allowed\"\n\
             from = [\"heat.ambient\", \"heat.rise_limit\", \"heat.sump_limit\"]\n\
             wrong = [{{ gives = \"{gives}\", says = \"You took the mean.\" }}]\n"
        );
        let bank = bank_with(&[("items/own.toml", &file)]);
        for system in System::ALL {
            let settings = bank.settings(system, |item, _| item.id == "own-mean");
            assert!(!settings.is_empty());
            for (setting, seed) in settings.iter().flat_map(|setting| (0..5).map(move |seed| (setting, seed))) {
                let question = setting.question(seed).unwrap();
                let shown = |name: &str| find(name).get().unit(system).from_base(question.shown(find(name)));
                let mean = (shown("heat.ambient") + shown("heat.sump_limit")) / 2.0;
                let answer = format!("{mean} {}", find("heat.allowed").get().unit(system).symbol);
                let marked = &mark(&question, &[&answer])[0];
                assert!(marked.says.contains("You took the mean."), "{gives}, {answer}: {}", marked.says);
            }
        }
    }
}

/// A temperature given for a rise is told for what it is on either paper, as the thermometer of that paper shows it.
#[test]
fn an_own_turn_of_a_reading_for_a_rise_is_recognised_in_both_units() {
    let file = "[[item]]\nid = \"own-rise\"\ntopic = \"heat\"\nskill = \"x\"\ntitle = \"Own\"\ntext = \"The {machine}.\"\n\
                [[item.part]]\ntext = \"How much warmer is it?\"\nask = \"heat.rise\"\n\
                from = [\"heat.housing\", \"heat.ambient\"]\n\
                wrong = [{ gives = \"heat.housing\", says = \"That is the housing itself.\" }]\n";
    let bank = bank_with(&[("items/own.toml", file)]);
    for system in System::ALL {
        let settings = bank.settings(system, |item, _| item.id == "own-rise");
        assert!(!settings.is_empty());
        for (setting, seed) in settings.iter().flat_map(|setting| (0..5).map(move |seed| (setting, seed))) {
            let question = setting.question(seed).unwrap();
            let answer = amount::write(find("heat.housing").get(), question.shown(find("heat.housing")), system);
            let marked = &mark(&question, &[&answer])[0];
            assert!(marked.says.contains("That is the housing itself."), "{answer}: {}", marked.says);
        }
    }
}

/// Where a drawing to scale would show the answer, a usual size stands there, and the drawing says so.
#[test]
fn a_drawing_that_hides_a_length_says_that_it_is_not_to_scale() {
    let bank = bank();
    for (id, hidden) in [("sag-for-a-pull", true), ("sag-for-a-pull-exactly", true), ("slack-tension", false)] {
        let settings = bank.settings(System::Us, |item, _| item.id == id);
        assert!(!settings.is_empty(), "{id} is asked");
        for setting in settings {
            let question = setting.question(3).unwrap();
            let sheet = Sheet { item: setting.item, question: &question, family: "x" };
            let paper = paper_model(head(), &[sheet], None, Vec::new(), Vec::new()).unwrap();
            let figure = format!("{:?}", paper.questions[0].figure);
            assert_eq!(figure.contains("Not to scale."), hidden, "{id}: {figure}");
        }
    }
}
