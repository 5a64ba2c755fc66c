//! Who may sign, and what stands in the way.

use drivecourse_calc::follow_up::verdict::{Hindrance, Signatory, hindrance};

use super::decide::{closed, guards};
use crate::relation::{Relation, relation};
use crate::source::Source::CommonPractice;
use crate::typed::Choice;

pub(super) const PEOPLE: &[&str] = &[
    "competent, authorised and licensed",
    "competent and authorised, no licence",
    "competent, not authorised here",
    "authorised, but not trained for this work",
];

pub(super) const HINDRANCES: &[&str] = &[
    "nothing, it may be signed",
    "a safety finding is open",
    "the decision is not accept",
    "the person is not competent for this work",
    "the person is not authorised",
    "the licence is missing",
];

/// What the choice of [`PEOPLE`] says of the person.
fn signatory(person: Choice) -> Signatory {
    Signatory { competent: person.0 != 3, authorised: person.0 != 2, licensed: person.0 == 0 }
}

fn stands_in_the_way(decision: Choice, guard: Choice, person: &Signatory, licence: Choice) -> Choice {
    Choice(match hindrance(&[closed(decision), guards(guard)], person, licence.0 != 0) {
        None => 0,
        Some(Hindrance::SafetyOpen) => 1,
        Some(Hindrance::NotAccepted(_) | Hindrance::NothingChecked) => 2,
        Some(Hindrance::NotCompetent) => 3,
        Some(Hindrance::NotAuthorised) => 4,
        Some(Hindrance::NotLicensed) => 5,
    })
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "follow.hindrance/gravest": "What stands in the way of the signature",
        "follow.hindrance": Choice = stands_in_the_way(decision, guard, &signatory(person), licence),
        from {
            decision: Choice = "follow.decision", guard: Choice = "start.guards", person: Choice = "follow.person",
            licence: Choice = "follow.licence",
        },
        formula [],
        source CommonPractice,
        turns {
            "guard can follow": stands_in_the_way(decision, Choice(0), &signatory(person), licence) => "You let the guard be fitted later; an open safety finding comes before everything else.";
            "adjust is near enough": stands_in_the_way(Choice(0), guard, &signatory(person), licence) => "You passed over the decision; only an accepted machine is signed off.";
            "skill is enough": stands_in_the_way(decision, guard, &Signatory { authorised: true, ..signatory(person) }, licence) => "You took skill for authority; the plant says who may release a machine.";
            "rank is enough": stands_in_the_way(decision, guard, &Signatory { competent: true, ..signatory(person) }, licence) => "You took authority for skill; whoever signs must be trained and found competent for this work.";
            "licence passed over": stands_in_the_way(decision, guard, &signatory(person), Choice(0)) => "You passed over the licence; where local law asks for one, the signature needs it.";
            "licence asked for anyway": stands_in_the_way(decision, guard, &signatory(person), Choice(1)) => "You asked for a licence where local law asks for none.";
            "person first": stands_in_the_way(Choice(0), Choice(0), &signatory(person), licence) => "You looked at the person only; first the machine must be fit to be signed.";
        },
    }
    .method("In this order: an open safety finding, a decision that is not accept, then the person: competent, authorised by the plant, licensed where local law asks for it. The first that fails is named.")
    .limits("local law and the plant's own rules say who is competent, authorised and licensed"),
];
