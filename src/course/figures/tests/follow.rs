//! The calendar of checks and the baseline chart.

use super::*;

fn chart() -> BaselineChart {
    let logged = |value: f64| Logged { value: Some(value), label: Some(format!("{value:.1} °C")) };
    let across = |value: f64| Some(Across { value, label: format!("{value:.1} °C") });
    BaselineChart {
        id: "chart".into(),
        title: "A settled rise and its limits".into(),
        value_name: "Rise over ambient, °C".into(),
        settled: [40.2, 41.5, 39.8, 40.9].map(logged).into(),
        later: [41.2, 44.9].map(logged).into(),
        mean: across(40.6),
        upper: across(44.2),
        lower: across(37.0),
    }
}

/// A reading just on the mean.
fn level_reading() -> Logged {
    Logged { value: Some(40.6), label: some("40.6 °C") }
}

fn calendar() -> Calendar {
    let row = |name: &str, ages: &[f64], locked_out, last| CalendarRow {
        name: name.into(),
        ages: ages.into(),
        locked_out,
        last: Some(last),
        last_label: Some(format!("{last} h")),
        next_label: some("168 h"),
    };
    Calendar {
        id: "calendar".into(),
        title: "When each check is due".into(),
        rows: vec![
            row("temperature, vibration, noise", &[1.0, 2.0, 4.0, 8.0, 24.0, 72.0, 168.0, 336.0, 672.0], false, 97.0),
            row("bolts", &[8.0, 72.0, 168.0, 672.0, 2016.0], true, 80.0),
            row("soft foot", &[72.0, 336.0, 1344.0, 4368.0], true, 74.0),
        ],
        now: Some((110.0, "now 110 h".into())),
    }
}

pub(super) fn specimens() -> Vec<(&'static str, Drawn)> {
    vec![
        ("chart", chart().draw()),
        ("chart_bare", BaselineChart { mean: None, upper: None, lower: None, ..chart() }.draw()),
        (
            "chart_close",
            BaselineChart { later: vec![Logged { value: Some(90.0), label: some("90.0 °C") }], ..chart() }.draw(),
        ),
        ("chart_settled", BaselineChart { later: vec![], ..chart() }.draw()),
        (
            "chart_even",
            BaselineChart { settled: vec![level_reading(); 4], later: vec![level_reading()], ..chart() }.draw(),
        ),
        ("calendar", calendar().draw()),
        ("calendar_early", Calendar { now: Some((0.6, "now 1 h".into())), ..calendar() }.draw()),
        ("calendar_late", Calendar { now: Some((5000.0, "now 5000 h".into())), ..calendar() }.draw()),
    ]
}

/// Figures with `value` somewhere in them.
pub(super) fn odd(value: f64) -> Vec<Drawn> {
    let mut late = calendar();
    late.rows[1].ages.push(value);
    vec![
        BaselineChart { later: vec![Logged { value: Some(value), label: None }], ..chart() }.draw(),
        BaselineChart { upper: Some(Across { value, label: "limit".into() }), ..chart() }.draw(),
        late.draw(),
        Calendar { now: Some((value, "now".into())), ..calendar() }.draw(),
    ]
}

#[test]
fn what_has_nothing_or_too_much_to_show_is_refused() {
    assert!(BaselineChart { settled: vec![], later: vec![], ..chart() }.draw().is_err());
    assert!(BaselineChart { settled: vec![level_reading(); 13], ..chart() }.draw().is_err());
    assert!(Calendar { rows: vec![], ..calendar() }.draw().is_err());
    assert!(Calendar { rows: vec![calendar().rows[0].clone(); 9], ..calendar() }.draw().is_err());
}

#[test]
fn a_baseline_chart_and_a_calendar_tell_what_they_show() {
    let figure = chart().draw().unwrap();
    assert_eq!(figure.table.len(), 9);
    assert_eq!(figure.table[5], ("Later reading 6".to_owned(), "44.9 °C".to_owned()));
    // Two readings and their mean are not told apart by colour: solid dots, rings, dash and dot.
    assert_eq!(figure.svg.matches("<circle").count(), 6);
    assert!(figure.svg.contains("fig-centre") && figure.svg.matches("fig-hidden").count() == 2);
    let figure = calendar().draw().unwrap();
    assert_eq!(figure.table[3].1, "8\u{a0}h, 3\u{a0}d, 1\u{a0}wk, 4\u{a0}wk, 12\u{a0}wk");
    assert_eq!(figure.table[4], ("bolts, last".to_owned(), "80 h".to_owned()));
    assert_eq!(figure.svg.matches("<circle").count(), 9, "readings are circles");
    assert_eq!(figure.svg.matches("<polygon").count(), 9, "what needs the lock is square");
}
