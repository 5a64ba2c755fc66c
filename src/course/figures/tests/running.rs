//! The spectrum, the severity zones and the powers of the drive train.

use super::*;

fn spectrum() -> Spectrum {
    let stem = |frequency, height, name: &str| Stem {
        frequency,
        height,
        name: some(name),
        row: Some((name.into(), format!("{frequency} Hz, {height} mm/s"))),
    };
    Spectrum {
        id: "spectrum".into(),
        title: "Spectrum".into(),
        frequency_name: "Frequency, Hz".into(),
        height_name: "Velocity, mm/s r.m.s.".into(),
        stems: vec![
            stem(24.3, 0.52, "motor"),
            stem(48.7, 0.11, "2 × motor"),
            stem(1.2, 0.03, "output shaft"),
            stem(20.4, 0.14, "chain"),
            stem(462.0, 0.2, "gear mesh"),
            stem(4.1, 1.3, "bearing"),
        ],
    }
}

fn zones() -> ZoneBar {
    ZoneBar {
        id: "zones".into(),
        title: "Zones".into(),
        limits: [0.71, 1.8, 4.5],
        limit_labels: ["0.71 mm/s", "1.80 mm/s", "4.50 mm/s"].map(some),
        reading: Some(1.32),
        reading_label: some("1.32 mm/s"),
    }
}

fn power() -> PowerChain {
    PowerChain {
        id: "power".into(),
        powers: [7.05, 6.35, 5.98],
        power_labels: ["7.05 kW", "6.35 kW", "5.98 kW"].map(some),
        supply_label: some("399 V, 12.1 A, power factor 0.84"),
        motor_label: some("efficiency 90.1 %"),
        reducer_label: some("efficiency 0.941"),
    }
}

pub(super) fn specimens() -> Vec<(&'static str, Drawn)> {
    let mut close = spectrum();
    close.stems[3].frequency = 24.0;
    close.stems[3].height = 0.5;
    close.stems[5].frequency = 1.3;
    let zones_us = ZoneBar {
        limits: [0.0551, 0.1102, 0.1772],
        limit_labels: ["0.0551 in/s", "0.1102 in/s", "0.1772 in/s"].map(some),
        reading: Some(0.2),
        reading_label: some("0.200 in/s"),
        ..zones()
    };
    vec![
        ("spectrum", spectrum().draw()),
        ("spectrum_close", close.draw()),
        ("zones", zones().draw()),
        ("zones_far", ZoneBar { reading: Some(40.0), reading_label: some("40.0 mm/s"), ..zones() }.draw()),
        ("zones_low", ZoneBar { reading: Some(0.0), reading_label: some("0.00 mm/s"), ..zones() }.draw()),
        ("zones_us", zones_us.draw()),
        ("power", power().draw()),
        ("power_lossy", PowerChain { powers: [10.0, 6.0, 2.0], supply_label: None, ..power() }.draw()),
    ]
}

/// Figures with `value` somewhere in them.
pub(super) fn odd(value: f64) -> Vec<Drawn> {
    let mut drawn = Vec::new();
    for part in 0..3 {
        let mut s = spectrum();
        let stem = &mut s.stems[part];
        *[&mut stem.frequency, &mut stem.height][part % 2] = value;
        drawn.push(s.draw());
        let mut z = zones();
        z.limits[part] = value;
        drawn.push(z.draw());
        let mut p = power();
        p.powers[part] = value;
        drawn.push(p.draw());
    }
    drawn.push(ZoneBar { reading: Some(value), ..zones() }.draw());
    drawn
}

#[test]
fn what_makes_no_sense_is_refused() {
    assert!(Spectrum { stems: vec![], ..spectrum() }.draw().is_err());
    assert!(ZoneBar { limits: [2.0, 1.0, 3.0], ..zones() }.draw().is_err());
    assert!(PowerChain { powers: [5.0, 6.0, 4.0], ..power() }.draw().is_err());
}
