use super::*;
use crate::amount;

const FAMILY: &str = r#"
name = "test drive"
[fixed]
"drive.motor_power" = "10 kW"
[draw]
"drive.load_share" = { between = ["60 %", "90 %"] }
"mount.foot_length" = { of = "mount.along", between = ["20 %", "25 %"] }
[[pool]]
"mount.along" = "300 mm"
[[pool]]
"mount.along" = "500 mm"
[[limit]]
quantity = "drive.power"
at_most = "8 kW"
healthy = true
[faults]
healthy = 0.5
pairs = 1
[[fault]]
id = "overload"
name = "drive overloaded"
[fault.draw]
"drive.load_share" = { between = ["90 %", "130 %"] }
[[fault.limit]]
quantity = "drive.power"
at_least = "12 kW"
[[fault]]
id = "idle"
name = "drive idling"
[fault.draw]
"drive.load_share" = { between = ["5 %", "10 %"] }
[[fault]]
id = "long-foot"
name = "foot too long"
[fault.draw]
"mount.foot_length" = { of = "mount.along", between = ["40 %", "50 %"] }
"#;

fn plan(text: &str) -> Result<Plan, Vec<Problem>> {
    Family::read("test", text).and_then(Plan::new)
}

fn value(case: &Case, id: &str) -> f64 {
    case.value(Registry::get().find(id).unwrap()).unwrap()
}

#[test]
fn a_share_follows_its_quantity() {
    let plan = plan(FAMILY).unwrap();
    for (faults, low, high) in [(&[][..], 0.2, 0.25), (&[2][..], 0.4, 0.5)] {
        let mut frames = [false; 2];
        for seed in 0..200 {
            let case = plan.draw_with(seed, Some(faults)).unwrap();
            let along = value(&case, "mount.along");
            frames[usize::from(along > 0.4)] = true;
            let share = value(&case, "mount.foot_length") / along;
            assert!((low..high).contains(&share), "seed {seed}: {share}");
        }
        assert_eq!(frames, [true; 2], "both rows of the pool are drawn");
    }
}

#[test]
fn limits_are_asked_of_the_machines_they_are_for() {
    let plan = plan(FAMILY).unwrap();
    let mut between = 0;
    for seed in 0..500 {
        assert!(value(&plan.draw_with(seed, Some(&[])).unwrap(), "drive.power") <= 8000.0);
        assert!(value(&plan.draw_with(seed, Some(&[0])).unwrap(), "drive.power") >= 12_000.0);
        between += u32::from(value(&plan.draw_with(seed, Some(&[2])).unwrap(), "drive.power") > 8000.0);
    }
    // A third of 60 to 90 % lies above 80 %.
    assert!((120..214).contains(&between), "{between} of 500 above the limit for healthy machines");
}

/// A third of the healthy draws and three quarters of the overloads break their limits; the shares hold all the same.
#[test]
fn rejection_does_not_change_how_often_faults_come() {
    let plan = plan(FAMILY).unwrap();
    let cases: Vec<_> = (0..3000).map(|seed| plan.draw(seed).unwrap()).collect();
    let share = |found: &dyn Fn(&Case) -> bool| cases.iter().filter(|case| found(case)).count() as f64 / 3000.0;
    // Three standard deviations of a share of 3000 are at most 0.028.
    assert!((share(&|case| case.faults.is_empty()) - 0.5).abs() < 0.028);
    // First picks overload in a third of the faulty machines; second picks add it to one long foot in three.
    assert!((share(&|case| case.faults.contains(&0)) - 0.5 * (1.0 / 3.0 + 1.0 / 9.0)).abs() < 0.028);
    assert!(cases.iter().any(|case| case.faults == [0, 2]) && cases.iter().any(|case| case.faults == [1, 2]));
}

#[test]
fn faults_that_change_the_same_never_come_together() {
    let plan = plan(FAMILY).unwrap();
    assert!((0..2000).all(|seed| {
        let faults = plan.draw(seed).unwrap().faults;
        faults.len() <= 2 && faults.windows(2).all(|pair| pair[0] < pair[1]) && faults != [0, 1]
    }));
}

#[test]
fn a_share_needs_something_to_start_from() {
    let broken = |from: &str, to: &str| {
        assert!(FAMILY.contains(from));
        plan(&FAMILY.replace(from, to)).unwrap_err().iter().map(|problem| problem.what.clone()).collect::<Vec<_>>()
    };
    let of = r#"of = "mount.along", between = ["20 %", "25 %"]"#;
    let another_kind = broken(of, r#"of = "drive.motor_power", between = ["20 %", "25 %"]"#);
    assert_eq!(another_kind, ["mount.foot_length cannot be a share of drive.motor_power."]);
    assert_eq!(
        broken(of, r#"of = "mount.foot_width", between = ["20 %", "25 %"]"#),
        ["mount.foot_length is drawn as a share of mount.foot_width, which is no value to start from."]
    );
    let itself = broken(of, r#"of = "mount.foot_length", between = ["20 %", "25 %"]"#);
    assert_eq!(itself.len(), 1);
    assert_eq!(
        broken(of, r#"of = "mount.along", between = ["25 %", "20 %"]"#)[0],
        "`between` wants two shares, the smaller first."
    );
}

#[test]
fn a_faults_limit_is_not_for_healthy_machines() {
    let text = FAMILY.replace("at_least = \"12 kW\"", "at_least = \"12 kW\"\nhealthy = true");
    assert_eq!(plan(&text).unwrap_err()[0].what, "A limit of a fault cannot be asked of healthy machines.");
}

#[test]
fn only_what_is_needed_is_worked_out() {
    let plan = plan(FAMILY).unwrap();
    let find = |name: &str| Registry::get().find(name).unwrap();
    let (size, group) = (find("vibrate.size"), find("vibrate.group"));
    let needs = plan.needs([group].into_iter());
    for seed in 0..50 {
        for faults in [&[][..], &[0], &[2]] {
            let whole = plan.draw_with(seed, Some(faults)).unwrap();
            let part = plan.draw_needed(seed, Some(faults), &needs).unwrap();
            assert_eq!((whole.rejected, &whole.faults), (part.rejected, &part.faults));
            let mut known = Registry::get().quantities().filter(|id| part.value(*id).is_some());
            assert!(known.all(|id| part.value(id) == whole.value(id)), "seed {seed}");
            assert!(part.value(group).is_some() && part.value(find("drive.power")).is_some());
            assert!(part.value(size).is_none() && whole.value(size).is_some());
        }
    }
}

#[test]
fn who_cannot_be_drawn_is_told_with_fault_bound_and_nearest_value() {
    let text = FAMILY.replace("at_least = \"12 kW\"", "at_least = \"14 kW\"\nbecause = \"it must show\"");
    let plan = plan(&text).unwrap();
    let told = plan.draw_with(3, Some(&[0])).unwrap_err();
    assert_eq!(told.limit, Some(1));
    assert_eq!(&text[told.span.clone().unwrap()], "\"drive.power\"");
    let told = told.to_string().replace(amount::SPACE, " ");
    for part in
        ["with the fault \"overload\" (drive overloaded)", "100 %", "(it must show)", "the least allowed is 14.00 kW"]
    {
        assert!(told.contains(part), "{part}: {told}");
    }
    // 130 % of 10 kW is the most that this fault draws.
    let nearest = told.split(" was ").nth(1).unwrap().split(' ').next().unwrap().parse::<f64>().unwrap();
    assert!((12.98..=13.0).contains(&nearest), "{told}");
    let rejections = plan.rejections(0..60);
    assert!(rejections.most.contains("with the fault \"overload\""), "{}", rejections.most);
    assert_eq!(rejections.kept as usize + rejections.undrawn.len(), 60);
    assert!(rejections.undrawn.iter().all(|told| told.wanted.contains("overload")), "{:?}", rejections.undrawn);
}

#[test]
fn what_a_table_of_its_own_lacks_is_told_once() {
    let old = Family::read("old", FAMILY).unwrap();
    let read = |rest: &str| {
        let text = format!("name = \"new\"\nlike = \"old\"\n{rest}[[pool]]\n\"mount.across\" = \"200 mm\"\n");
        Family::read_beside("new", &text, &[&old]).and_then(Plan::new).map_err(|told| (told, text))
    };
    let (told, text) = read("").unwrap_err();
    assert_eq!(told.len(), 1, "{told:?}");
    assert_eq!(told[0].line_column(&text), Some((4, 1)));
    let mend: Vec<_> = told[0].mend.lines().collect();
    assert!(told[0].what.contains("lacks one of its columns") && mend.contains(&"mount.along [mm]"), "{told:?}");
    // What is said can be copied.
    assert_eq!(mend.last(), Some(&"\"mount.along\" = \"300 mm\""));
    let mended = read("[fixed]\n\"mount.along\" = \"300 mm\"\n").unwrap();
    assert!(mended.family.lacks().next().is_none() && mended.draw(1).is_ok());
    // Where nothing rests on it, it may be gone.
    let bare = read("without = [\"long-foot\"]\n[draw]\n\"mount.foot_length\" = \"70 mm\"\n").unwrap();
    assert_eq!(bare.family.lacks().map(|id| id.get().id).collect::<Vec<_>>(), ["mount.along"]);
}

#[test]
fn a_fixed_value_that_the_others_make_otherwise_is_told_of() {
    let family = |factor: &str, teeth: &str| {
        format!("name = \"Test\"\n[fixed]\n\"load.connection_factor\" = {factor}\n\"chain.teeth_small\" = {teeth}\n")
    };
    let teeth = Registry::get().relation("load.connection_factor/teeth").unwrap();
    let mut values = vec![f64::NAN; Registry::get().len()];
    values[usize::from(teeth.at[0])] = 19.0;
    let listed = teeth.eval(&values).unwrap();
    assert!(plan(&family(&format!("{listed}"), "19")).is_ok());
    let told = plan(&family("2.4", "19")).unwrap_err();
    assert_eq!(told.len(), 1, "{told:?}");
    let problem = &told[0];
    assert!(problem.what.contains("load.connection_factor is fixed to 2.4 here, but follows as "), "{problem}");
    assert!(problem.what.contains("from chain.teeth_small (load.connection_factor/teeth)"), "{problem}");
    assert_eq!(problem.mend.lines().last(), Some("\"load.connection_factor\" = { value = \"2.4\", source = \"...\" }"));
    assert_eq!(problem.line_column(&family("2.4", "19")), Some((3, 1)));
    // The plant's own value goes before the list, and a value that differs from machine to machine contradicts nothing.
    assert!(plan(&family("{ value = \"2.4\", source = \"order 7\" }", "19")).is_ok());
    let drawn = "name = \"Test\"\n[fixed]\n\"load.connection_factor\" = 2.4\n[draw]\n\"chain.teeth_small\" = { choose = [19, 21] }\n";
    assert!(plan(drawn).is_ok());
    // With a table every one of its machines must be otherwise.
    let rows = |teeth: &[&str]| {
        let rows: String = teeth.iter().map(|teeth| format!("[[pool]]\n\"chain.teeth_small\" = {teeth}\n")).collect();
        format!("name = \"Test\"\n[fixed]\n\"load.connection_factor\" = 2.4\n{rows}")
    };
    assert_eq!(plan(&rows(&["17", "19"])).unwrap_err().len(), 1);
}

#[test]
fn a_machine_with_a_name_is_built_the_same_each_time() {
    let text = "name = \"Lift\"\nmachines = \"lifts.csv\"\n[draw]\n\"vibrate.elements\" = { choose = [9, 10, 11, 12, 13] }\n\
                \"vibrate.element_dia\" = { of = \"load.shaft_diameter\", between = [\"25 %\", \"29 %\"] }\n\
                \"heat.ambient\" = { between = [\"10 °C\", \"30 °C\"] }\n";
    let rows = "machine,load.shaft_diameter [mm]\nL-1,65\nL-2,65\nL-3,70\n";
    let plan = |rows: &str| {
        let table = |_: &str| Some(rows.to_owned());
        Plan::new(Family::read_whole("lift", text, &[], table).unwrap()).unwrap()
    };
    let named = plan(rows);
    let seen = |plan: &Plan, wanted: Option<&str>| {
        let cases = (0..60).map(|seed| plan.draw(seed).unwrap());
        let cases = cases.filter(|case| wanted.is_none() || plan.machine_name(case) == wanted);
        let of = |case: &Case, name: &str| case.values[Registry::get().find(name).unwrap().index()].to_bits();
        let all: Vec<_> = cases
            .map(|case| ((of(&case, "vibrate.elements"), of(&case, "vibrate.element_dia")), of(&case, "heat.ambient")))
            .collect();
        let distinct = |values: Vec<u64>| values.into_iter().collect::<std::collections::BTreeSet<_>>().len();
        let builds = all.iter().map(|(build, _)| *build).collect::<std::collections::BTreeSet<_>>();
        (builds.len(), distinct(all.iter().map(|(_, ambient)| *ambient).collect()), all.len())
    };
    for name in ["L-1", "L-2", "L-3"] {
        let (builds, ambients, met) = seen(&named, Some(name));
        assert!(builds == 1 && met > 8 && ambients == met, "{name}: {builds} builds, {ambients} ambients of {met}");
    }
    assert_eq!(seen(&named, None).0, 3, "two machines with the same plates are two machines");
    // A twin keeps the build of the machine that it is like.
    let case = named.draw(5).unwrap();
    let held = [Registry::get().find("heat.ambient").unwrap()];
    let elements = Registry::get().find("vibrate.elements").unwrap();
    let needs = named.needs([elements].into_iter());
    for seed in 0..20 {
        let twin = named.draw_like(&case, &held, &[], &needs, seed).unwrap();
        assert_eq!(twin.values[elements.index()], case.values[elements.index()]);
    }
}
