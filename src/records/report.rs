//! What can be read from the records: plain figures, for pages, tables and programs.

mod answer;
mod class;
mod items;
mod person;
mod standing;

pub use answer::{AnswerReport, Change, Revision};
pub use class::{CauseLine, ClassReport, ExamTotals, SkillShare};
pub use items::{ItemFilter, ItemLine, ItemsReport, Reliability, Variant};
pub(crate) use person::SAYS as AUTHOR_SAYS;
pub use person::{PaperLine, PersonReport, SkillLine};
pub(crate) use standing::SAYS as STANDING_SAYS;
pub use standing::{DueReport, Standing, State, standings};
