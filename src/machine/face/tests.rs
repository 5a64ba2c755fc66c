use super::*;

fn read(face: Face, system: System, shown: f64) -> Vec<(Slip, f64)> {
    face.misreadings(system, shown).into_iter().map(|misreading| (misreading.slip, misreading.value)).collect()
}

/// The value that `slip` gives, to nine places.
fn by(face: Face, system: System, shown: f64, slip: Slip) -> Option<f64> {
    let found = read(face, system, shown).into_iter().find(|(other, _)| *other == slip);
    found.map(|(_, value)| (value * 1e9).round() / 1e9)
}

#[test]
fn a_dial_is_misread_by_turns_rows_and_signs() {
    let dial = |shown, slip| by(Face::Dial, System::Si, shown, slip);
    assert_eq!(dial(2.43, Slip::RevolutionMissed), Some(0.43));
    assert_eq!(dial(0.43, Slip::RevolutionMissed), None);
    assert_eq!(dial(0.43, Slip::RevolutionAdded), Some(1.43));
    assert_eq!(dial(-0.43, Slip::RevolutionAdded), Some(-1.43));
    assert_eq!(dial(1.43, Slip::OtherWayRound), Some(1.57));
    assert_eq!(dial(-0.43, Slip::OtherWayRound), Some(-0.57));
    assert_eq!(dial(1.00, Slip::OtherWayRound), None);
    assert_eq!(dial(-0.43, Slip::SignReversed), Some(0.43));
    assert_eq!(dial(0.43, Slip::ParallaxHigh), Some(0.44));
    assert_eq!(dial(0.43, Slip::ParallaxLow), Some(0.42));
    assert_eq!(by(Face::Dial, System::Us, 0.217, Slip::RevolutionMissed), Some(0.017));
    assert_eq!(by(Face::Dial, System::Us, 0.017, Slip::OtherWayRound), Some(0.083));
    assert_eq!(DialHands::at(System::Si, -1.3), DialHands { out: true, turns: 1, divisions: 30.0 });
    // The last bit of 0.3 / 0.01 must not lose a division.
    assert_eq!(DialHands::at(System::Si, 0.3).divisions, 30.0);
    assert_eq!(DialHands::at(System::Us, 0.2).turns, 2);
}

#[test]
fn a_scale_is_misread_by_halves_sixty_fourths_and_numbers() {
    let (mm, inch) = (System::Si, System::Us);
    assert_eq!(by(Face::Scale, mm, 17.5, Slip::HalfDropped), Some(17.0));
    assert_eq!(by(Face::Scale, mm, 17.0, Slip::HalfDropped), None);
    assert_eq!(by(Face::Scale, mm, 17.5, Slip::CountedBack), Some(22.5));
    assert_eq!(by(Face::Scale, mm, 20.0, Slip::CountedBack), None);
    assert_eq!(by(Face::Scale, mm, 17.5, Slip::NumberMissed), Some(7.5));
    assert_eq!(by(Face::Scale, mm, 7.5, Slip::NumberMissed), None, "no scale shows less than nought");
    assert_eq!(by(Face::Scale, mm, 17.5, Slip::ParallaxHigh), Some(18.0));
    let sixty_fourths = by(Face::Scale, inch, 1.0 + 11.0 / 64.0, Slip::SixtyFourthsAsThirtySeconds).unwrap();
    assert_eq!(sixty_fourths, 1.0 + 11.0 / 32.0);
    assert_eq!(by(Face::Scale, inch, 1.0, Slip::SixtyFourthsAsThirtySeconds), None);
    assert_eq!(by(Face::Scale, inch, 11.0 / 64.0, Slip::CountedBack), Some(21.0 / 64.0));
}

#[test]
fn a_sight_glass_is_misread_by_its_edge() {
    assert_eq!(by(Face::SightGlass, System::Si, 137.0, Slip::EdgeOfOil), Some(138.0));
    assert_eq!(by(Face::SightGlass, System::Si, 137.0, Slip::ParallaxHigh), None, "the edge comes to the same");
    assert_eq!(by(Face::SightGlass, System::Si, 137.0, Slip::ParallaxLow), Some(136.0));
    assert_eq!(by(Face::SightGlass, System::Si, 137.0, Slip::CountedBack), Some(143.0));
    let doubled = by(Face::SightGlass, System::Us, 5.0 + 13.0 / 32.0, Slip::ThirtySecondsAsSixteenths);
    assert_eq!(doubled, Some(5.8125));
}

#[test]
fn leaves_are_added_and_one_may_be_left_out_or_counted_too_many() {
    let leaves = feeler_leaves(System::Si, 0.45).unwrap();
    assert_eq!(leaves, [0.30, 0.15]);
    assert_eq!(feeler_leaves(System::Us, 0.018).unwrap(), [0.012, 0.006]);
    assert_eq!(feeler_leaves(System::Si, 40.0), None);
    assert_eq!(feeler_leaves(System::Si, -0.1), None);
    assert_eq!(by(Face::Feeler, System::Si, 0.45, Slip::ThickestOnly), Some(0.30));
    assert_eq!(by(Face::Feeler, System::Si, 0.95, Slip::LeafLeftOut), Some(0.80));
    assert_eq!(by(Face::Feeler, System::Si, 0.45, Slip::LeafTooMany), Some(0.50));
    assert_eq!(by(Face::Feeler, System::Us, 0.006, Slip::ThickestOnly), None, "one leaf alone is the gap");
    for steps in 0..50_u32 {
        for system in System::ALL {
            let shown = f64::from(steps) * Face::Feeler.division(system, 0.0);
            let sum: f64 = feeler_leaves(system, shown).unwrap().iter().sum();
            assert!((sum - shown).abs() < 1e-9, "{steps} steps: {sum} for {shown}");
        }
    }
}

#[test]
fn a_thermometer_is_misread_on_its_inner_row() {
    assert_eq!(by(Face::Thermometer, System::Si, 65.0, Slip::OtherUnitsRow), Some(149.0));
    assert_eq!(by(Face::Thermometer, System::Us, 149.0, Slip::OtherUnitsRow), Some(65.0));
    assert_eq!(by(Face::Thermometer, System::Si, 63.0, Slip::CountedBack), Some(77.0));
    assert_eq!(by(Face::Thermometer, System::Si, 63.0, Slip::ParallaxLow), Some(62.0));
    for shown in -60..400 {
        let (low, high) = thermometer_range(f64::from(shown));
        assert!(low + 20.0 <= f64::from(shown) && f64::from(shown) <= high - 20.0);
    }
}

#[test]
fn a_vibration_meter_is_misread_on_the_other_row() {
    assert_eq!(VibrationRange::of(2.41), VibrationRange { full: 3.0, threes: true });
    assert_eq!(VibrationRange::of(4.5), VibrationRange { full: 10.0, threes: false });
    assert_eq!(VibrationRange::of(0.177).division(), 0.01);
    assert_eq!(by(Face::VibrationMeter, System::Si, 2.4, Slip::OtherRangeRow), Some(8.0));
    assert_eq!(by(Face::VibrationMeter, System::Si, 4.5, Slip::OtherRangeRow), Some(1.35));
    assert_eq!(by(Face::VibrationMeter, System::Si, 4.5, Slip::ParallaxHigh), Some(4.7));
}

#[test]
fn no_misreading_is_right_and_no_two_are_alike() {
    for face in Face::ALL {
        assert_eq!(Face::of(face.instrument()), Some(face));
        assert_eq!(Face::from_picture(face.picture()), Some(face));
        for system in System::ALL {
            let step = face.instrument().step(system).step;
            for steps in 1..800_u32 {
                let shown = face.figures(system).round(f64::from(steps) * step);
                let wrong = face.misreadings(system, shown);
                let close = 0.5 * face.division(system, shown);
                for (place, one) in wrong.iter().enumerate() {
                    assert!((one.value - shown).abs() > close, "{face:?} {shown}: {one:?}");
                    assert!(wrong[..place].iter().all(|other| (other.value - one.value).abs() >= close));
                    assert!(one.slip.says().ends_with('.') && !one.slip.id().is_empty());
                }
            }
        }
    }
}
