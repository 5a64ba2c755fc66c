//! Every quantity that is read off a face, drawn while it is asked and once it is known.

use drivecourse_machine::{Face, Known, Registry, System, amount};

use super::super::{Portrait, View};

/// Readings in steps of the instrument: small, middling, large, and below nought where there is a sign.
fn steps(face: Face) -> &'static [f64] {
    match face {
        Face::Dial => &[3.0, 43.0, 137.0, -37.0, -250.0],
        Face::Scale => &[3.0, 35.0, 75.0, 1069.0],
        Face::Feeler => &[5.0, 9.0, 19.0],
        Face::SightGlass => &[7.0, 109.0, 173.0],
        Face::Thermometer => &[-20.0, 63.0, 149.0, 210.0],
        Face::VibrationMeter => &[7.0, 177.0, 241.0, 450.0, 2210.0],
    }
}

/// Words of the drawing, its description and its table.
fn words(figure: &crate::figures::Figure) -> Vec<String> {
    let lettered = figure.svg.split("<text").skip(1);
    let mut words: Vec<String> =
        lettered.map(|text| text[text.find('>').unwrap() + 1..text.find("</text>").unwrap()].to_owned()).collect();
    words.push(figure.description.clone());
    words.extend(figure.table.iter().map(|(name, value)| format!("{name}: {value}")));
    words
}

#[test]
fn every_face_is_drawn_and_keeps_its_reading_while_it_is_asked() {
    let mut drawn = 0;
    for id in Registry::get().quantities() {
        let Known::Read(instrument) = id.get().known else { continue };
        let Some(face) = Face::of(instrument) else { continue };
        for system in System::ALL {
            for count in steps(face) {
                let base = id.get().unit(system).to_base(count * instrument.step(system).step);
                let mut values = vec![f64::NAN; Registry::get().len()];
                values[id.index()] = base;
                let mut portrait = Portrait {
                    id: "face".into(),
                    system,
                    values,
                    read: vec![id],
                    view: View::Question { shown: Vec::new(), asked: vec![id] },
                };
                let asked = portrait.draw(face.picture()).unwrap_or_else(|error| panic!("{}: {error}", id.get().id));
                let answer = amount::write(id.get(), base, system);
                // A single leaf has its mark on it, and an inch mark its number: there the picture says it by itself.
                let plain = |words: &String| words.ends_with(&answer) && !matches!(face, Face::Feeler);
                assert!(!words(&asked).iter().any(plain), "{} tells {answer}: {:?}", id.get().id, words(&asked));
                portrait.view = View::Machine;
                let known = portrait.draw(&format!("{} {}", face.picture(), id.get().id)).unwrap();
                assert_eq!(known.table.last().unwrap().1, answer);
                drawn += 1;
            }
        }
    }
    assert!(drawn > 300, "{drawn}");
}

#[test]
fn a_face_says_what_it_cannot_show() {
    let values = vec![f64::NAN; Registry::get().len()];
    let portrait = Portrait { id: "face".into(), system: System::Si, values, read: Vec::new(), view: View::Machine };
    assert_eq!(portrait.draw("dial").unwrap_err().to_string(), "the face dial has no reading to show");
    let wrong = portrait.draw("dial chain.sag").unwrap_err();
    assert_eq!(wrong.to_string(), "\"chain.sag\" is not read off the face dial");
    assert!(portrait.draw("scales").unwrap_err().to_string().contains("did you mean \"scale\""));
    assert!(portrait.draw("scale chain.sag").unwrap_err().to_string().contains("does not determine"));
}
