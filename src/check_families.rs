//! What `check` finds in families: machines that cannot be drawn or seldom are, columns that a table lacks.

use core::ops::Range;

use drivecourse_machine::chance::derive;
use drivecourse_machine::{Plan, Problem, Registry, Rejections, heading, messages, quoted};
use drivecourse_quiz::Bank;

use crate::check::Check;
use crate::check_found::Found;
use crate::own_family::Own;
use crate::{bank, new, sold_sizes, undrawable};

messages! { pub(crate) SAYS {
    LACKS_COLUMN = "check-lacks-column", "The table of machines has no column {columns}; what would need it is not asked of this family.";
    LACKS_COLUMNS = "check-lacks-columns", "The table of machines has no column {columns}; what would need them is not asked of this family.";
    LACKS_COLUMN_MEND = "check-lacks-column-mend", "Add what you know of your machines.";
    NOT_ASKED = "check-topic-not-asked", "This family is for questions about {topic} too, and the module has no item about that.";
    NOT_ASKED_MEND = "check-topic-not-asked-mend", "Add \"{topic}\" to the items under [reuse] in module.toml, or take the topic out here.";
    EXAMPLE_SOURCE = "check-example-source", "{name} still has the source of the example, {source}, which papers and worked solutions would show.";
    EXAMPLE_SOURCE_MEND = "check-example-source-mend", "Write where your value stands, or take the line out.";
    ITS_CHAPTER = "check-topic-chapter", "A chapter about it stands in the course when book/SUMMARY.md lists it: - [{title}]({chapter})";
    WASTEFUL_FAMILY = "check-wasteful", "{rate} machines are rejected for each one kept; {most}.";
    WASTEFUL_UNDRAWN = "check-wasteful-undrawn", "{rate} machines are rejected for each one kept; {most}. {count} of {all} machines could not be drawn at all.";
    WASTEFUL_MEND = "check-wasteful-mend", "Narrow the draws that break it, or widen the limit.";
    LEFT_OUT = "check-left-out", "The fault {fault} ({name}) is left out here, and machines of this family could have it: they can be drawn, and it would show.";
    LEFT_OUT_MEND = "check-left-out-mend", "Where your drive cannot have it, leave it. Else take it out of `without`.";
    FAVOURED = "check-favoured", "{share} % of the machines kept are {machine}; an even share of the table would be {even} %. What rejects the others most: {most}.";
    FAVOURED_MEND = "check-favoured-mend", "Mend the values of the others that break it, or widen the limit; `drivecourse look {family} --spread 300` shows the shares.";
} }

/// Where the value of the family's own file stands that makes it wasteful: the limit is another family's, or calculations have
/// no result.
fn wasteful_by(own: &Own<'_>, worst: Option<usize>) -> Option<Range<usize>> {
    let of = match worst {
        Some(limit) => vec![own.plan.family.limits[limit].quantity],
        None => Registry::get().quantities().filter(|id| own.plan.determines(*id)).collect(),
    };
    let behind = own.behind(&of, |id| own.names(id), |usual| rejections(usual).rate() <= WASTEFUL);
    behind.first().and_then(|id| own.span(*id))
}

/// Machines drawn from each family to see how many it rejects.
const MACHINES: u64 = 200;
/// Rejected machines for each one kept from which on a family is called wasteful.
pub(crate) const WASTEFUL: f64 = 5.0;

/// What is rejected of machines drawn from a family.
pub(crate) fn rejections(plan: &Plan) -> Rejections {
    plan.rejections((0..MACHINES).map(|machine| derive(0xc4ec, machine)))
}

impl Check<'_> {
    /// Draws machines from every family: of each sort that it has, and at random.
    pub(crate) fn families(&mut self, bank: &Bank) {
        let standard = bank::standard(self.assets);
        for plan in &bank.plans {
            let own_family = Own::of(self.assets, bank, &standard, plan);
            let path = format!("scenarios/families/{}.toml", plan.family.id);
            // From this one not even the first machine could be drawn, and that is said, there or in its table.
            let table = plan.family.table.as_ref().map(|table| format!("scenarios/families/{}", table.file));
            let mut files = core::iter::once(&path).chain(&table).map(|path| self.assets.shown(path));
            if files.any(|file| self.found.iter().any(|found| found.file == file)) {
                self.upside_down(&own_family);
                continue;
            }
            let mut undrawable = undrawable::sorts(plan);
            undrawable::join(plan, &own_family.text, &mut undrawable);
            let is_drawn = undrawable.is_empty();
            let told =
                undrawable.into_iter().map(|error| Found::from(undrawable::tell_of(self.assets, &own_family, error)));
            let told: Vec<Found> = told.collect();
            if let Some(table) = &plan.family.table {
                let far = table.strange.iter().map(|strange| undrawable::far(self.assets, plan, table, strange).into());
                // Where it is what keeps machines from being drawn, that is said.
                let far = far.filter(|far: &Found| told.iter().all(|told| !told.is_at(far)));
                self.notices.extend(far);
                self.notices.extend(sold_sizes::doubts(self.assets, plan, table).into_iter().map(Found::from));
            }
            self.found.extend(told);
            if !is_drawn {
                self.upside_down(&own_family);
                continue;
            }
            let text = self.assets.scenarios.get(&path["scenarios/".len()..]);
            let text = text.map_or("".into(), |bytes| String::from_utf8_lossy(bytes)).into_owned();
            let lacks: Vec<_> = plan
                .family
                .lacks()
                .filter(|id| !plan.determines(*id))
                .map(|id| heading(id, plan.family.told_in))
                .collect();
            if !lacks.is_empty() {
                let what = if lacks.len() == 1 { LACKS_COLUMN } else { LACKS_COLUMNS };
                let what = what.say(&[("columns", &lacks.join(", "))]);
                self.note(&path, &text, Problem::whole(what, LACKS_COLUMN_MEND.text()));
            }
            self.topics_without_items(bank, plan, &path, &text);
            self.example_source(plan, &path, &text);
            // Now and then a machine cannot be drawn, one with two faults, say: that is a question of rate.
            let rejections = rejections(plan);
            let own = bank::is_own(self.assets, &plan.family.id);
            let span_of = |worst: Option<usize>| {
                let span = worst.map(|place| plan.family.limits[place].span.clone());
                span.filter(|span| span.end <= text.len())
            };
            for favoured in rejections.favoured.iter().filter(|_| own) {
                let percent = |share: f64| format!("{:.0}", share * 100.0);
                let machine = plan.family.machines.get(favoured.row).cloned();
                let machine = machine.unwrap_or_else(|| (favoured.row + 1).to_string());
                let what = FAVOURED.say(&[
                    ("share", &percent(favoured.share)),
                    ("machine", &machine),
                    ("even", &percent(1.0 / plan.family.pool.len() as f64)),
                    ("most", &favoured.most),
                ]);
                let mend = FAVOURED_MEND.say(&[("family", &plan.family.id)]);
                self.notice(&path, &text, Problem { span: span_of(favoured.worst), what, mend });
            }
            if rejections.rate() <= WASTEFUL {
                continue;
            }
            // Where it is no limit of its own, the value of its own that is behind it.
            let span = span_of(rejections.worst).or_else(|| wasteful_by(&own_family, rejections.worst));
            let (rate, most) = (format!("{:.0}", rejections.rate()), rejections.most.to_string());
            let what = if rejections.undrawn.is_empty() { WASTEFUL_FAMILY } else { WASTEFUL_UNDRAWN };
            let (count, all) = (rejections.undrawn.len().to_string(), MACHINES.to_string());
            let what = what.say(&[("rate", &rate), ("most", &most), ("count", &count), ("all", &all)]);
            let problem = Problem { span, what, mend: WASTEFUL_MEND.text().into() };
            // What an author can mend is always told; the program's own families are there to be taken or left.
            if own { self.notice(&path, &text, problem) } else { self.note(&path, &text, problem) }
        }
    }

    /// Of a family of which no machine could be drawn, and that is said: a window whose ends are swapped, in its place.
    fn upside_down(&mut self, own: &Own<'_>) {
        let id = &own.plan.family.id;
        let nearest = own.plan.nearest(1, Some(&[])).case;
        let told = self.found.len();
        if self.swapped(own, &[(id.clone(), vec![nearest])]) {
            let swapped = self.found.split_off(told);
            self.found.retain(|found| !found.what.contains(&quoted(id)));
            self.found.extend(swapped);
            self.swapped.push(quoted(id));
        }
    }

    /// A value whose source is still that of the example, in a family that has become an author's own.
    fn example_source(&mut self, plan: &Plan, path: &str, text: &str) {
        let family = &plan.family;
        let left = family.stated.iter().filter(|stated| stated.source == new::EXAMPLE_SOURCE);
        for stated in left.filter(|_| family.name != new::EXAMPLE_NAME) {
            // What another file has is told of there.
            let Some(place) = family.place(stated.quantity, None) else { continue };
            let what = EXAMPLE_SOURCE.say(&[("name", stated.quantity.get().id), ("source", &quoted(&stated.source))]);
            let mend = EXAMPLE_SOURCE_MEND.text().to_owned();
            self.notice(path, text, Problem { span: Some(place), what, mend });
        }
    }

    /// A topic that a family of the module names and nobody is asked about: its items were not taken over with it.
    fn topics_without_items(&mut self, bank: &Bank, plan: &Plan, path: &str, text: &str) {
        // Every module takes over the questions on safe work, whatever their topics.
        let asked = |topic: &str| bank.items.iter().any(|item| item.topic == topic && item.skill != new::SAFE_WORK);
        for (topic, span) in plan.family.topics.iter().filter(|(topic, _)| !asked(topic)) {
            let all = bank::for_chapters(self.assets, bank.clone());
            let chapters = new::chapters(self.assets, &all);
            let what = NOT_ASKED.say(&[("topic", &quoted(topic))]);
            let mut mend = NOT_ASKED_MEND.say(&[("topic", topic)]);
            if let Some((chapter, title)) = chapters.get(topic) {
                mend.push_str(&format!(" {}", ITS_CHAPTER.say(&[("title", title), ("chapter", chapter)])));
            }
            self.notice(path, text, Problem::at(span.clone(), what, mend));
        }
    }
}
