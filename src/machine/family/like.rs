//! A family written as a variation of another: what it says itself goes before what it takes over.

use core::ops::Range;

use serde::Deserialize;
use toml::Spanned;

use super::{Asked, Family, Lacks, Limit, strange};
use crate::messages;
use crate::problem::{Problem, quoted};

messages! { pub(crate) SAYS {
    NO_FAULT = "problem-family-like-no-fault", "{family} has no fault called {name}.";
    NO_FAULT_MEND = "problem-family-like-no-fault-mend", "Take it out of `without`.";
    MACHINE_OF = "problem-family-like-machine-of", "machine {machine} of {family}";
    FIRST_OF = "problem-family-like-first-of", "the first machine of {family}";
} }

impl Family {
    /// The family that the one in `text` is like, if it names one, and where: that one must be read first.
    pub fn likeness(text: &str) -> Option<Spanned<String>> {
        #[derive(Deserialize)]
        struct Head {
            like: Option<Spanned<String>>,
        }
        toml::from_str::<Head>(text).ok()?.like
    }

    /// Takes over from `other` what this family does not say itself; `place` is where it names the other, and `is_made_up`
    /// whether it says that the machines of its own table are.
    ///
    /// * A quantity fixed, drawn or in the table of machines here is not taken over. A table here (at `table`) takes the
    ///   place of the other's: a weight or a bearing is that of one real machine, and never silently another's. What it
    ///   lacks is kept in mind, so that it can be named. Without a table here, single columns of the other's give way.
    /// * A limit here takes the place of those on the same quantity that are asked of the same machines. One that only
    ///   keeps made-up machines usual is not taken over where there is a table of real ones; it is kept in mind, so that
    ///   machines beyond it can be told of.
    /// * A fault here takes the place of the other's fault of that id, in the list too, with its limits; those in
    ///   `without` are left out.
    pub(super) fn take_over(
        &mut self,
        other: &Self,
        without: &[(String, Range<usize>)],
        place: &Range<usize>,
        table: Range<usize>,
        is_made_up: bool,
    ) -> Vec<Problem> {
        let mut problems = Vec::new();
        let is_real = !self.pool.is_empty() && !is_made_up;
        for (id, span) in without {
            if !other.faults.iter().any(|fault| fault.id == *id) {
                problems.push(Problem::at(
                    span.clone(),
                    told!(NO_FAULT, "family" = other.id, "name" = quoted(id)),
                    told!(NO_FAULT_MEND),
                ));
            }
        }
        if self.pool.is_empty() {
            let own: Vec<_> = self.roots.iter().map(|(id, _)| *id).collect();
            self.pool = other.pool.clone();
            self.pool.iter_mut().for_each(|row| row.retain(|(id, _)| !own.contains(id)));
            self.pool.retain(|row| !row.is_empty());
            if !self.pool.is_empty() {
                self.machines = other.machines.clone();
            }
        } else if let Some(first) = other.pool.first() {
            let has =
                |id| self.pool[0].iter().any(|(own, _)| *own == id) || self.roots.iter().any(|(own, _)| *own == id);
            let columns = first.iter().filter(|(id, _)| !has(*id)).copied().collect();
            let whose = match other.machines.first() {
                Some(name) => told!(MACHINE_OF, "machine" = name, "family" = other.id),
                None => told!(FIRST_OF, "family" = other.id),
            };
            self.lacks = Lacks { of: other.id.clone(), whose, columns, span: table };
            if let Some(table) = &mut self.table {
                table.strange = strange::values(&self.pool, other);
            }
        }
        let pooled: Vec<_> = self.pool.first().into_iter().flatten().map(|(id, _)| *id).collect();
        let own: Vec<_> = self.roots.iter().map(|(id, _)| *id).chain(pooled).collect();
        let stated = other.stated.iter().filter(|stated| !own.contains(&stated.quantity)).cloned();
        self.stated = self.stated.iter().cloned().chain(stated).collect();
        self.roots.extend(other.roots.iter().filter(|(id, _)| !own.contains(id)).cloned());
        self.roots.sort_by_key(|(id, _)| *id);

        // Faults of the other keep their places, also where one here replaces one of them, and those that are new here
        // come after them: so a fault of the same seed stays the same. Each takes its limits along.
        let own_faults = std::mem::take(&mut self.faults);
        let own_limits = std::mem::take(&mut self.limits);
        let (mut moved, mut own_moved) = (Vec::new(), Vec::new());
        for (old, fault) in other.faults.iter().enumerate() {
            if without.iter().any(|(id, _)| *id == fault.id) {
                continue;
            }
            let place = self.faults.len();
            match own_faults.iter().position(|own| own.id == fault.id) {
                Some(own) => {
                    own_moved.push((own, place));
                    self.faults.push(own_faults[own].clone());
                }
                None => {
                    moved.push((old, place));
                    self.faults.push(fault.clone());
                }
            }
        }
        for (own, fault) in own_faults.into_iter().enumerate() {
            if !own_moved.iter().any(|(from, _)| *from == own) {
                own_moved.push((own, self.faults.len()));
                self.faults.push(fault);
            }
        }
        let place_in =
            |moved: &[(usize, usize)], old: usize| moved.iter().find(|(from, _)| *from == old).map(|(_, to)| *to);
        let own_limits: Vec<_> = (own_limits.into_iter())
            .map(|mut limit| {
                limit.asked = limit.asked.moved(|fault| place_in(&own_moved, fault)).unwrap_or(limit.asked);
                limit
            })
            .collect();
        for limit in &other.limits {
            let Some(asked) = limit.asked.moved(|fault| place_in(&moved, fault)) else { continue };
            // What holds for every machine takes the place of what held for sound ones.
            let replaces = |own: &Asked| *own == asked || (*own, asked) == (Asked::Always, Asked::Healthy);
            if !own_limits.iter().any(|own| own.quantity == limit.quantity && replaces(&own.asked)) {
                // Its own place is in the other's file; here it came in by the name.
                let mut limit = limit.clone();
                (limit.asked, limit.span) = (asked, place.clone());
                if limit.of.is_empty() {
                    limit.of.clone_from(&other.id);
                }
                if limit.usual && is_real { self.unbound.push(limit) } else { self.limits.push(limit) }
            }
        }
        self.limits.extend(own_limits);
        problems
    }

    /// This family with the fault of `other` at `place` besides, behind its own, and with that one's limits; `None` where it has
    /// a fault of that name.
    pub fn with_fault(&self, other: &Self, place: usize) -> Option<Self> {
        let fault = other.faults.get(place).filter(|fault| self.faults.iter().all(|own| own.id != fault.id))?;
        let mut family = self.clone();
        let asked = Asked::Fault(family.faults.len());
        family.faults.push(fault.clone());
        let limits = other.limits.iter().filter(|limit| limit.asked == Asked::Fault(place));
        family.limits.extend(limits.map(|limit| Limit { asked, ..limit.clone() }));
        Some(family)
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Asked, Draw, Family, Limit};

    const OLD: &str = r#"
        name = "Old"
        [fixed]
        "mount.shim_most" = 4
        [draw]
        "heat.ambient" = { between = ["8 °C", "32 °C"] }
        [[pool]]
        "drive.motor_power" = "3 kW"
        "drive.motor_speed" = "1435 r/min"
        [[limit]]
        quantity = "heat.ambient"
        at_most = "30 °C"
        [[limit]]
        quantity = "drive.motor_power"
        at_most = "5 kW"
        healthy = true
        [faults]
        healthy = 0.6
        [[fault]]
        id = "hot"
        name = "hot"
        [fault.draw]
        "heat.ambient" = "40 °C"
        [[fault]]
        id = "cold"
        name = "cold"
        [fault.draw]
        "heat.ambient" = "2 °C"
        [[fault.limit]]
        quantity = "heat.ambient"
        at_most = "5 °C"
    "#;

    fn read(text: &str) -> Result<Family, Vec<crate::Problem>> {
        let old = Family::read("old", OLD).unwrap();
        Family::read_beside("new", text, &[&old])
    }

    #[test]
    fn what_is_not_said_is_taken_over() {
        let family = read(
            r#"
            name = "New"
            like = "old"
            without = ["hot"]
            [fixed]
            "drive.motor_speed" = "960 r/min"
            [draw]
            "heat.ambient" = { between = ["1 °C", "12 °C"] }
            [[limit]]
            quantity = "heat.ambient"
            at_most = "11 °C"
            [[fault]]
            id = "warm"
            name = "warm"
            [fault.draw]
            "heat.ambient" = "20 °C"
            [[fault.limit]]
            quantity = "heat.ambient"
            at_least = "15 °C"
            "#,
        )
        .unwrap();
        assert_eq!((family.name.as_str(), family.healthy), ("New", 0.6));
        assert_eq!(family.faults.iter().map(|fault| fault.id.as_str()).collect::<Vec<_>>(), ["cold", "warm"]);
        let names: Vec<_> = family.roots.iter().map(|(id, _)| id.get().id).collect();
        assert_eq!(names, ["drive.motor_speed", "mount.shim_most", "heat.ambient"]);
        assert!(matches!(family.roots[2].1, Draw::Between(low, _) if (low - 274.15).abs() < 1e-9));
        assert_eq!(family.pool[0].len(), 1, "the column that is fixed here has left the pool");
        let asked: Vec<_> = family.limits.iter().map(|limit| (limit.quantity.get().id, limit.asked)).collect();
        assert_eq!(
            asked,
            [
                ("drive.motor_power", Asked::Healthy),
                ("heat.ambient", Asked::Fault(0)),
                ("heat.ambient", Asked::Always),
                ("heat.ambient", Asked::Fault(1)),
            ]
        );
        assert!((family.limits[2].at_most - 284.15).abs() < 1e-9);
    }

    #[test]
    fn what_only_keeps_machines_usual_is_not_asked_of_real_ones() {
        let usual = OLD.replace("at_most = \"5 kW\"", "at_most = \"5 kW\"\nusual = true");
        let old = Family::read("old", &usual).unwrap();
        assert_eq!(old.limits.iter().filter(|limit| limit.usual).count(), 1);
        let read = |text: &str| {
            let table =
                |_: &str| Some("machine,drive.motor_power [kW],drive.motor_speed [r/min]\nA,30,960\n".to_owned());
            let text = format!("name = \"New\"\nlike = \"old\"\n{text}");
            let family = Family::read_whole("new", &text, &[&old], table).unwrap();
            let names = |limits: &[Limit]| limits.iter().map(|limit| limit.quantity.get().id).collect::<Vec<_>>();
            (names(&family.limits), names(&family.unbound))
        };
        let (all, power) = (vec!["heat.ambient", "drive.motor_power", "heat.ambient"], "drive.motor_power");
        // Machines that are made up, here or there, keep it; those of its own table are not, wherever that stands.
        assert_eq!(read(""), (all.clone(), vec![]));
        let pool = "[[pool]]\n\"drive.motor_power\" = \"4 kW\"\n\"drive.motor_speed\" = \"960 r/min\"\n";
        for table in [pool, "machines = \"a.csv\"\n"] {
            assert_eq!(read(table), (vec!["heat.ambient", "heat.ambient"], vec![power]), "{table}");
            assert_eq!(read(&format!("made_up = true\n{table}")), (all.clone(), vec![]), "{table}");
        }
        // One's own is kept, and nothing is left of the other.
        let own = "[[limit]]\nquantity = \"drive.motor_power\"\nat_most = \"45 kW\"\nhealthy = true\n";
        let (limits, unbound) = read(&format!("machines = \"a.csv\"\n{own}"));
        assert_eq!((limits, unbound), (vec!["heat.ambient", "heat.ambient", power], vec![]));
    }

    #[test]
    fn a_fault_is_had_back_with_its_limits() {
        let old = Family::read("old", OLD).unwrap();
        let text = "name = \"New\"\nlike = \"old\"\nwithout = [\"cold\"]\n";
        let new = Family::read_beside("new", text, &[&old]).unwrap();
        let with = new.with_fault(&old, 1).unwrap();
        assert_eq!(with.faults.iter().map(|fault| fault.id.as_str()).collect::<Vec<_>>(), ["hot", "cold"]);
        let asked = with.limits.iter().filter(|limit| limit.asked == Asked::Fault(1)).collect::<Vec<_>>();
        assert!(matches!(asked[..], [limit] if (limit.at_most - 278.15).abs() < 1e-9), "{asked:?}");
        assert_eq!(new.with_fault(&old, 0), None, "it has that one");
    }

    #[test]
    fn a_fault_that_is_replaced_keeps_its_place() {
        let family = read(
            r#"
            name = "New"
            like = "old"
            [[fault]]
            id = "warm"
            name = "warm"
            [fault.draw]
            "heat.ambient" = "20 °C"
            [[fault.limit]]
            quantity = "heat.ambient"
            at_most = "21 °C"
            [[fault]]
            id = "hot"
            name = "hotter"
            [fault.draw]
            "heat.ambient" = "44 °C"
            [[fault.limit]]
            quantity = "heat.ambient"
            at_least = "43 °C"
            "#,
        )
        .unwrap();
        let names: Vec<_> = family.faults.iter().map(|fault| fault.name.as_str()).collect();
        assert_eq!(names, ["hotter", "cold", "warm"]);
        // Each of the three keeps its own limit: at least 43, at most 5, at most 21.
        let of = |fault| family.limits.iter().filter(|limit| limit.asked == Asked::Fault(fault)).collect::<Vec<_>>();
        let celsius = |kelvin: f64| (kelvin - 273.15).round();
        assert!(matches!(of(0)[..], [limit] if celsius(limit.at_least) == 43.0));
        assert!(matches!(of(1)[..], [limit] if celsius(limit.at_most) == 5.0));
        assert!(matches!(of(2)[..], [limit] if celsius(limit.at_most) == 21.0));
    }

    #[test]
    fn what_a_likeness_took_over_is_taken_over_again() {
        let old = Family::read("old", OLD).unwrap();
        let middle = "name = \"Middle\"\nlike = \"old\"\nwithout = [\"hot\"]\n[fixed]\n\"mount.shim_most\" = 5\n";
        let middle = Family::read_beside("middle", middle, &[&old]).unwrap();
        let new =
            "name = \"New\"\nlike = \"middle\"\n[draw]\n\"heat.ambient\" = { between = [\"20 °C\", \"21 °C\"] }\n";
        let new = Family::read_beside("new", new, &[&middle]).unwrap();
        assert_eq!(new.faults.iter().map(|fault| fault.id.as_str()).collect::<Vec<_>>(), ["cold"]);
        assert_eq!(new.pool, old.pool);
        assert!(matches!(new.roots[0].1, Draw::Fixed(most) if most == 5.0), "from the middle one");
        assert!(matches!(new.roots[1].1, Draw::Between(low, _) if (low - 293.15).abs() < 1e-9), "its own");
        assert_eq!(new.limits.len(), 3);
    }

    #[test]
    fn problems_of_a_likeness_have_a_place() {
        for (text, at, said) in [
            ("name = \"New\"\nlike = \"odd\"", "\"odd\"", "no sound family"),
            ("name = \"New\"\nlike = \"olt\"", "\"olt\"", "no sound family"),
            ("name = \"New\"\nlike = \"old\"\nwithout = [\"worm\"]", "\"worm\"", "no fault called"),
            ("name = \"New\"\nwithout = [\"hot\"]", "\"hot\"", "no other family"),
        ] {
            let problems = read(text).unwrap_err();
            assert_eq!(problems.len(), 1, "{problems:?}");
            assert_eq!(&text[problems[0].span.clone().unwrap()], at);
            assert!(problems[0].what.contains(said), "{problems:?}");
        }
        let near = read("name = \"New\"\nlike = \"olt\"").unwrap_err();
        assert_eq!(near[0].mend, "Did you mean \"old\"?");
        let far = read("name = \"New\"\nlike = \"faraway\"").unwrap_err();
        assert!(far[0].mend.starts_with("There are old."), "{far:?}");
        // One that takes the place of another of its name may be like that.
        let old = Family::read("old", OLD).unwrap();
        let own = Family::read_beside("old", "name = \"New\"\nlike = \"olt\"", &[&old]).unwrap_err();
        assert_eq!(own[0].mend, "Did you mean \"old\"?");
        let alone = Family::read("old", "name = \"New\"\nlike = \"olt\"").unwrap_err();
        assert!(alone[0].mend.starts_with("There is none yet."), "{alone:?}");
    }
}
