//! Reads a family from its file, with every mistake found in one pass.

use std::collections::BTreeSet;

use toml::Spanned;

use super::file::{File, Shares, Values};
use super::reader::{Reader, parted};
use super::said::*;
use super::table::{FamilyProblem, machines};
use super::{Draw, Family, Fault, Lacks, OwnTable};
use crate::language::Message;
use crate::problem::{Problem, did_you_mean, quoted};
use crate::registry::{Registry, nearest};
use crate::toml_file::read_toml;
use crate::topics;
use crate::unit::System;

impl Family {
    /// Reads the family `id` from TOML.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass; one for a family that is like another ([`Self::read_beside`] reads those).
    pub fn read(id: &str, text: &str) -> Result<Self, Vec<Problem>> {
        Self::read_beside(id, text, &[])
    }

    /// Reads the family `id`, which may be like one of `others`.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass.
    pub fn read_beside(id: &str, text: &str, others: &[&Self]) -> Result<Self, Vec<Problem>> {
        Self::read_whole(id, text, others, |_| None)
            .map_err(|problems| problems.into_iter().map(|found| found.problem).collect())
    }

    /// Reads the family `id`, which may be like one of `others`, the first of that id, and may draw from a table of
    /// machines that `table` knows by its name.
    ///
    /// # Errors
    /// Every problem found, in one pass, each in the family's file or in the table.
    pub fn read_whole(
        id: &str,
        text: &str,
        others: &[&Self],
        table: impl Fn(&str) -> Option<String>,
    ) -> Result<Self, Vec<FamilyProblem>> {
        let own = |problem| FamilyProblem { table: None, problem };
        let file: File = read_toml(text).map_err(|problems| problems.into_iter().map(own).collect::<Vec<_>>())?;
        let mut in_table = Vec::new();
        let mut reader = Reader::default();
        let mut named = |name: &Spanned<String>, what: Message, mend: Message| {
            if name.get_ref().trim().is_empty() {
                reader.say(name.span(), told!(what), told!(mend));
            }
        };
        named(&file.name, NO_NAME, NO_NAME_MEND);
        file.fault.iter().for_each(|fault| named(&fault.name, NO_FAULT_NAME, NO_FAULT_NAME_MEND));
        let mut roots = reader.draws(&file.fixed, true);
        for (quantity, draw) in reader.draws(&file.draw, false) {
            if let Some(key) = file.draw.keys().find(|key| Registry::get().find(key.get_ref()) == Some(quantity))
                && roots.iter().any(|(other, _)| *other == quantity)
            {
                reader.say(key.span(), told!(BOTH, "name" = key.get_ref()), told!(BOTH_MEND));
            }
            roots.push((quantity, draw));
        }
        let mut pool = Vec::new();
        for row in &file.pool {
            let values = reader.draws(row, true);
            pool.push(
                values
                    .into_iter()
                    .filter_map(|(id, draw)| if let Draw::Fixed(value) = draw { Some((id, value)) } else { None })
                    .collect::<Vec<_>>(),
            );
        }
        // Names, and not values: one that cannot be read is a problem of its own.
        if let Some(first) = file.pool.first() {
            let named = |row: &Values| {
                let names = row.iter().flat_map(|(key, value)| {
                    let parted = parted(key.get_ref(), value.get_ref()).map(|(id, _)| id.get().id.to_owned());
                    let parted: Vec<_> = parted.collect();
                    if parted.is_empty() { vec![key.get_ref().clone()] } else { parted }
                });
                names.collect::<BTreeSet<_>>()
            };
            for row in file.pool.iter().filter(|row| named(row) != named(first)) {
                reader.problems.push(Problem {
                    span: row.keys().next().map(Spanned::span),
                    what: told!(POOL_ROW),
                    mend: told!(POOL_ROW_MEND),
                });
            }
        }
        let (mut names, mut own_table) = (Vec::new(), None);
        if let Some(name) = &file.machines {
            match table(name.get_ref()) {
                _ if !pool.is_empty() => reader.say(name.span(), told!(TWO_TABLES), told!(TWO_TABLES_MEND)),
                None => reader.say(name.span(), told!(NO_TABLE, "name" = quoted(name.get_ref())), told!(NO_TABLE_MEND)),
                Some(text) => {
                    let mut beside = Reader::default();
                    let like = file.like.as_ref().and_then(|like| others.iter().find(|it| it.id == *like.get_ref()));
                    let usual = like.and_then(|like| like.pool.first()).into_iter().flatten();
                    let usual: Vec<_> = usual.map(|(id, _)| *id).collect();
                    let read = machines(&text, &usual, &mut beside);
                    (names, pool) = (read.names, read.pool);
                    let file = name.get_ref();
                    let in_file = |problem| FamilyProblem { table: Some(file.clone()), problem };
                    in_table.extend(beside.problems.into_iter().map(in_file));
                    own_table = Some(OwnTable {
                        file: file.clone(),
                        headings: read.headings,
                        columns: read.columns,
                        rows: read.rows,
                        cells: read.cells,
                        systems: read.systems,
                        strange: Vec::new(),
                    });
                }
            }
        }
        let mut limits: Vec<_> = file.limit.iter().filter_map(|limit| reader.limit(limit, None)).collect();
        let mut faults: Vec<Fault> = Vec::new();
        for fault in &file.fault {
            if faults.iter().any(|other| &other.id == fault.id.get_ref()) {
                reader.say(
                    fault.id.span(),
                    told!(TWO_FAULTS, "name" = quoted(fault.id.get_ref())),
                    told!(TWO_FAULTS_MEND),
                );
            }
            if !(fault.weight > 0.0 && fault.weight.is_finite()) {
                reader.say(fault.id.span(), told!(WEIGHT), told!(WEIGHT_MEND));
            }
            reader.fault = Some(fault.id.get_ref().clone());
            let draws = reader.draws(&fault.draw, false);
            limits.extend(fault.limit.iter().filter_map(|limit| reader.limit(limit, Some(faults.len()))));
            faults.push(Fault {
                id: fault.id.get_ref().clone(),
                name: fault.name.get_ref().clone(),
                weight: fault.weight,
                draws,
            });
        }
        let other = match &file.like {
            None => None,
            Some(like) => {
                let other = others.iter().find(|other| other.id == *like.get_ref()).copied();
                if other.is_none() {
                    // One of the program's may have this family's own name: this one may be like it.
                    let mut names: Vec<_> = others.iter().map(|other| other.id.as_str()).collect();
                    names.sort_unstable();
                    names.dedup();
                    let mend = match nearest(like.get_ref(), names.iter().copied()) {
                        Some(near) => did_you_mean(near),
                        None if names.is_empty() => told!(NO_LIKE_AT_ALL),
                        None => told!(NO_LIKE_MEND, "names" = names.join(", ")),
                    };
                    reader.say(like.span(), told!(NO_LIKE, "name" = quoted(like.get_ref())), mend);
                }
                other.zip(Some(like.span()))
            }
        };
        if let (None, Some(first)) = (&file.like, file.without.first()) {
            reader.say(first.span(), told!(WITHOUT), told!(WITHOUT_MEND));
        }
        if let (None, Some(first)) = (&file.like, file.topics.first()) {
            reader.say(first.span(), told!(TOPICS), told!(WITHOUT_MEND));
        }
        let known = || topics::ALL.iter().map(|topic| topic.id);
        let named = |topic: &topics::Topic| format!("{} ({})", topic.id, topic.heading());
        for topic in file.topics.iter().filter(|topic| !known().any(|id| id == topic.get_ref())) {
            let all = || told!(TOPICS_ARE, "names" = topics::ALL.iter().map(named).collect::<Vec<_>>().join(", "));
            // Who writes `temperature` means the topic that is headed so.
            let mend = (nearest(topic.get_ref(), known()).or_else(|| topics::headed(topic.get_ref())))
                .map_or_else(all, did_you_mean);
            reader.say(topic.span(), told!(NO_TOPIC, "name" = quoted(topic.get_ref())), mend);
        }
        let usual = other
            .as_ref()
            .map_or_else(Shares::default, |(other, _)| Shares { healthy: other.healthy, pairs: other.pairs });
        let shares = file.faults.unwrap_or(usual);
        let share = |value: f64| (0.0..=1.0).contains(&value);
        if !share(shares.healthy) || !share(shares.pairs) {
            reader.problems.push(Problem {
                span: text.find("[faults]").map(|at| at..at + "[faults]".len()),
                what: told!(SHARES),
                mend: told!(SHARES_MEND),
            });
        }
        roots.sort_by_key(|(id, _)| *id);
        let Shares { healthy, pairs } = shares;
        let told_in = own_table.as_ref().map_or_else(System::default, OwnTable::most);
        let mut family = Self {
            id: id.to_owned(),
            name: file.name.into_inner(),
            about: file.about,
            roots,
            pool,
            machines: names,
            stated: core::mem::take(&mut reader.stated).into(),
            limits,
            unbound: Vec::new(),
            faults,
            healthy,
            pairs,
            places: core::mem::take(&mut reader.places),
            lacks: Lacks::default(),
            table: own_table,
            told_in,
            topics: file.topics.iter().map(|topic| (topic.get_ref().clone(), topic.span())).collect(),
        };
        if let Some((other, place)) = other {
            let without: Vec<_> = file.without.iter().map(|id| (id.get_ref().clone(), id.span())).collect();
            let row = file.pool.first().and_then(|row| row.keys().map(Spanned::span).min_by_key(|span| span.start));
            let table = file.machines.as_ref().map(Spanned::span).or(row).unwrap_or_default();
            let topics: Vec<_> = file.topics.iter().map(|topic| topic.get_ref().as_str()).collect();
            let named = |id| family.limits.iter().any(|limit| limit.quantity == id);
            let reduced = (!topics.is_empty()).then(|| other.only(&topics, named));
            let other = reduced.as_ref().unwrap_or(other);
            reader.problems.extend(family.take_over(other, &without, &place, table, file.made_up));
        }
        in_table.extend(reader.problems.into_iter().map(own));
        if in_table.is_empty() { Ok(family) } else { Err(in_table) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(text: &str) -> Vec<String> {
        let problems = Family::read("test", text).unwrap_err();
        problems.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn what_lacks_its_quotation_marks_is_shown_with_them() {
        for (written, line) in [
            ("[fixed]\n\"chain.size\" = 80", "\n\"chain.size\" = \"80\""),
            (
                "[fixed]\nchain.size = 80\nchain.teeth_small = 19",
                "\n\"chain.size\" = \"80\"\n\"chain.teeth_small\" = 19",
            ),
            ("[[pool]]\nchain.size = \"80\"", "\n\"chain.size\" = \"80\""),
            ("[draw]\n\"chain.size\" = { choose = [\"80\", 60] }", "Write it so:\n\"60\""),
            ("[fixed]\n\"drive.motor_power\" = 7.5 kW", "\n\"drive.motor_power\" = \"7.5 kW\""),
            ("[fixed]\n\"chain.size\" = 08B", "\n\"chain.size\" = \"08B\""),
        ] {
            let told = told(&format!("name = \"Test\"\n{written}\n"));
            assert_eq!(told.len(), 1, "{written}: {told:?}");
            assert!(told[0].ends_with(line), "{written}: {told:?}");
        }
        assert!(told("name = \"Test\"\n[fixed]\n\"chain.size\" = 81\n")[0].contains("81 is none of the possibilities"));
    }

    #[test]
    fn an_empty_name_is_refused_where_it_stands() {
        let text = "name = \" \"\n[[fault]]\nid = \"hot\"\nname = \"\"\n";
        let problems = Family::read("test", text).unwrap_err();
        let lines: Vec<_> = problems.iter().map(|problem| problem.line_column(text).unwrap().0).collect();
        assert_eq!(lines, [1, 4], "{problems:?}");
    }

    #[test]
    fn what_a_quantity_cannot_be_is_refused_where_a_machine_would_have_it() {
        for written in [
            "[fixed]\n\"drive.ratio\" = 0.04",
            "[fixed]\n\"drive.ratio\" = { value = \"0.04\", source = \"plate\" }",
            "[draw]\n\"drive.ratio\" = { between = [\"0.04\", \"20\"] }",
            "[draw]\n\"drive.ratio\" = { choose = [20, 0.04] }",
            "[draw]\n\"drive.ratio\" = { about = 0.04, spread = 0.01 }",
            "[[pool]]\n\"drive.ratio\" = 0.04",
        ] {
            let told = told(&format!("name = \"Test\"\n{written}\n"));
            assert!(told.len() == 1 && told[0].ends_with("write 25."), "{written}: {told:?}");
        }
        // A spread, and a bound that says nothing, are no values of a machine.
        let text = "name = \"Test\"\n[draw]\n\"drive.ratio\" = { about = \"1:20\", spread = 0.5 }\n\
            [[limit]]\nquantity = \"drive.ratio\"\nat_least = 0\n";
        let family = Family::read("test", text).unwrap();
        assert_eq!(family.roots[0].1, Draw::About { middle: 20.0, spread: 0.5 });
    }

    #[test]
    fn a_share_is_drawn_between_two_or_among_some() {
        let read = |draw: &str| {
            let text = format!(
                "name = \"Test\"\n[fixed]\n\"align.twist_limit\" = \"0,5 mm/m\"\n[draw]\n\"align.twist\" = {draw}\n"
            );
            Family::read("test", &text)
        };
        let of = Registry::get().find("align.twist_limit").unwrap();
        for (draw, wanted) in [
            ("{ of = \"align.twist_limit\", between = [\"-48 %\", 0.48] }", Draw::Share { of, low: -0.48, high: 0.48 }),
            (
                "{ of = \"align.twist_limit\", choose = [\"-80 %\", \"75 %\"] }",
                Draw::ShareAmong { of, shares: vec![-0.8, 0.75] },
            ),
        ] {
            let family = read(draw).unwrap();
            let drawn = family.roots.iter().find(|(id, _)| id.get().id == "align.twist").unwrap();
            assert_eq!(drawn.1, wanted);
        }
        for draw in ["choose = []", "between = [\"80 %\"]", "between = [\"80 %\", \"70 %\"]"] {
            let problems = read(&format!("{{ of = \"align.twist_limit\", {draw} }}")).unwrap_err();
            assert_eq!(problems.len(), 1, "{draw}: {problems:?}");
        }
    }

    #[test]
    fn one_value_that_cannot_be_read_hides_no_other() {
        for (written, count) in [
            ("[draw]\n\"chain.size\" = { choose = [\"81\", \"60\", \"82\"] }", 2),
            ("[draw]\n\"heat.ambient\" = { between = [\"cold\", \"warm\"] }", 2),
            ("[draw]\n\"heat.ambient\" = { about = \"cold\", spread = \"some\" }", 2),
            ("[[limit]]\nquantity = \"heat.ambient\"\nat_least = \"cold\"\nat_most = \"warm\"", 2),
            // A row of which one value cannot be read names the same quantities as the others all the same.
            ("[[pool]]\n\"chain.size\" = \"80\"\n[[pool]]\n\"chain.size\" = \"81\"", 1),
            ("[[pool]]\n\"chain.size\" = \"80\"\n[[pool]]\nchain.size = \"60\"", 1),
        ] {
            let told = told(&format!("name = \"Test\"\n{written}\n"));
            assert_eq!(told.len(), count, "{written}: {told:?}");
        }
    }
}
