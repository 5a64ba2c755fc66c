//! Which calculations stand in which module of the browser build.
//!
//! All that a machine is made with stand in one; those that only ask and answer, and the wrong turns, in one a topic.
//! The lists are worked out by the compiler, so that a module carries nothing but its own.

use super::{LIST, Topic};
use crate::relation::{Bare, Relation};

/// Whether the entries of `topic` stand in the module of the topic `only`, if it is one of a topic.
const fn is_wanted(topic: &Topic, only: Option<&str>) -> bool {
    let Some(only) = only else { return true };
    let (one, other) = (topic.id.as_bytes(), only.as_bytes());
    let mut place = 0;
    while place < one.len() && place < other.len() && one[place] == other[place] {
        place += 1;
    }
    place == one.len() && place == other.len()
}

/// Goes through the calculations of a module: writes them to `out` from `at` on where it has room, and counts them.
macro_rules! each {
    ($only:expr, $out:expr) => {{
        let (mut count, mut topic) = (0, 0);
        while topic < LIST.len() {
            let mut file = 0;
            while is_wanted(&LIST[topic], $only) && file < LIST[topic].relations.len() {
                let entries = LIST[topic].relations[file];
                let mut entry = 0;
                while entry < entries.len() {
                    let lists = entries[entry].of_module($only.is_some());
                    let mut list = 0;
                    while list < lists.len() {
                        let mut place = 0;
                        while place < lists[list].len() {
                            if count < $out.len() {
                                $out[count] = lists[list][place];
                            }
                            count += 1;
                            place += 1;
                        }
                        list += 1;
                    }
                    entry += 1;
                }
                file += 1;
            }
            topic += 1;
        }
        count
    }};
}

/// How many calculations the module of the topic `only` has, or that of the relations.
pub const fn count(only: Option<&str>) -> usize {
    let mut none: [Bare; 0] = [];
    each!(only, none)
}

/// They themselves, in the order of the registry; `N` is their [`count`].
pub const fn calculations<const N: usize>(only: Option<&str>) -> [Bare; N] {
    let mut out = [crate::relation::NOTHING; N];
    each!(only, out);
    out
}
