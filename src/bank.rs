//! The families and items of a module, read and checked.

use std::fmt::Write as _;

use anyhow::{Result, bail};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Family, Plan, Problem, System};
use drivecourse_quiz::{Item, Setting, read_items};

use crate::assets::{Assets, Files};

/// Families ready to draw from, and the items to ask about them.
#[derive(Debug)]
pub(crate) struct Bank {
    pub(crate) plans: Vec<Plan>,
    pub(crate) items: Vec<Item>,
}

impl Bank {
    /// Reads every family and item; all problems are reported in one pass.
    pub(crate) fn load(assets: &Assets) -> Result<Self> {
        let (bank, report) = Self::read(&assets.scenarios);
        if report.is_empty() { Ok(bank) } else { bail!("the scenarios cannot be used:\n{}", report.join("\n")) }
    }

    /// What can be read, and a report of every problem.
    pub(crate) fn read(scenarios: &Files) -> (Self, Vec<String>) {
        let mut report = Vec::new();
        let (mut plans, mut items): (Vec<Plan>, Vec<Item>) = (Vec::new(), Vec::new());
        for (path, bytes) in scenarios {
            let Some(name) = path.strip_suffix(".toml") else { continue };
            let shown = format!("scenarios/{path}");
            let Ok(text) = std::str::from_utf8(bytes) else {
                report.push(format!("{shown}: the file is not UTF-8 text; save it as UTF-8"));
                continue;
            };
            let mut tell =
                |problems: Vec<Problem>| report.extend(problems.iter().map(|problem| problem.report(&shown, text)));
            if let Some(id) = name.strip_prefix("families/") {
                match Family::read(id, text).and_then(Plan::new) {
                    Ok(plan) => plans.push(plan),
                    Err(problems) => tell(problems),
                }
            } else if name.starts_with("items/") {
                match read_items(text) {
                    Ok(read) => {
                        for item in read {
                            if items.iter().any(|other| other.id == item.id) {
                                let what = format!("There is another item called {:?} in another file.", item.id);
                                tell(vec![Problem::at(item.span.clone(), what, "Give one of them another id.")]);
                            }
                            items.push(item);
                        }
                    }
                    Err(problems) => tell(problems),
                }
            }
        }
        (Self { plans, items }, report)
    }

    /// The family called `id`.
    pub(crate) fn plan(&self, id: &str) -> Result<&Plan> {
        match self.plans.iter().find(|plan| plan.family.id == id) {
            Some(plan) => Ok(plan),
            None => bail!(
                "there is no family {id:?}{}",
                self.hint(id, self.plans.iter().map(|plan| plan.family.id.as_str()))
            ),
        }
    }

    /// Every item with every family it settles on, in `system`.
    pub(crate) fn settings(&self, system: System, wanted: impl Fn(&Item, &Plan) -> bool) -> Vec<Setting<'_>> {
        let mut out = Vec::new();
        for item in &self.items {
            for plan in &self.plans {
                let allowed = item.families.is_empty() || item.families.contains(&plan.family.id);
                if allowed
                    && wanted(item, plan)
                    && let Ok(setting) = Setting::new(item, plan, system)
                {
                    out.push(setting);
                }
            }
        }
        out
    }

    /// `; did you mean ...?`, or the list of what there is.
    pub(crate) fn hint<'a>(&self, word: &str, names: impl Iterator<Item = &'a str> + Clone) -> String {
        if let Some(near) = nearest(word, names.clone()) {
            return format!("; did you mean {near:?}?");
        }
        let mut out = String::from("; there are:");
        for name in names {
            let _ = write!(out, " {name}");
        }
        out
    }
}
