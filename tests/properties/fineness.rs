//! Nothing is asked for more finely than it is printed, or than it can be read.

use std::collections::BTreeSet;
use std::sync::Mutex;

use super::*;

#[test]
fn no_tolerance_is_finer_than_what_is_printed_or_read() {
    let seen: Mutex<BTreeSet<(&str, bool)>> = Mutex::default();
    for_every_question(|setting, question| {
        for part in &question.parts {
            let Body::Quantity { asked, keys, .. } = &part.body else { continue };
            let quantity = asked.get();
            if matches!(quantity.kind, Kind::Choice | Kind::Count) {
                continue;
            }
            for key in keys {
                let half = |system: System| {
                    let unit = quantity.unit(system);
                    let step = quantity.display(system).figures.step(unit.from_base(key.value));
                    0.5 * step * unit.size().abs()
                };
                let seeing = &Registry::get().seeing(question.system)[asked.index()];
                // An inch is long: of what is worked out the millimetres say how fine it can be.
                let read = matches!(quantity.known, Known::Read(_));
                let other = if read { 0.0 } else { half(System::Si) };
                let least = half(question.system).max(other).max(seeing.half_step());
                assert!(
                    key.tolerance >= least * (1.0 - 1e-9),
                    "{} ({}) seed {}: {} ± {} is finer than {least}",
                    setting.item.id,
                    question.family,
                    question.seed,
                    quantity.id,
                    key.tolerance
                );
                seen.lock().unwrap().insert((quantity.id, question.system == System::Si));
            }
        }
    });
    assert!(seen.into_inner().unwrap().len() > 200, "quantities of every topic are asked in both systems");
}
