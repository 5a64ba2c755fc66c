//! Days of the calendar.

use core::fmt;

use drivecourse_machine::messages;
use serde::{Deserialize, Serialize};

/// A day of the Gregorian calendar, written `2026-11-25` (ISO 8601).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
pub struct Date {
    year: i32,
    month: u32,
    day: u32,
}

/// A text is no day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NoDate(String);

messages! { pub(crate) AUTHOR_SAYS {
    NO_DAY = "records-problem-no-day", "{text} is no day of the calendar; write year-month-day, such as 2026-11-25";
} }

impl fmt::Display for NoDate {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&NO_DAY.say(&[("text", &format!("{:?}", self.0))]))
    }
}

impl core::error::Error for NoDate {}

fn is_leap(year: i32) -> bool {
    year % 4 == 0 && (year % 100 != 0 || year % 400 == 0)
}

fn length(year: i32, month: u32) -> u32 {
    match month {
        2 if is_leap(year) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

messages! { pub(crate) SAYS {
    SAID = "report-date", "{year}-{month}-{day}";
} }

impl Date {
    /// As people write it in the language spoken.
    pub fn said(self) -> String {
        let (month, day) = (format!("{:02}", self.month), format!("{:02}", self.day));
        SAID.say(&[("year", &format!("{:04}", self.year)), ("month", &month), ("day", &day)])
    }

    /// Reads `2026-11-25`.
    ///
    /// # Errors
    /// [`NoDate`], also for a day its month does not have.
    pub fn read(text: &str) -> Result<Self, NoDate> {
        let fault = || NoDate(text.chars().take(40).collect());
        let fields: Vec<&str> = text.trim().split('-').collect();
        let [year, month, day] = fields[..] else { return Err(fault()) };
        let shape = |field: &str, length: usize| field.len() == length && field.bytes().all(|b| b.is_ascii_digit());
        if !(shape(year, 4) && shape(month, 2) && shape(day, 2)) {
            return Err(fault());
        }
        let number = |field: &str| field.parse::<u32>().map_err(|_| fault());
        let (year, month, day) = (number(year)? as i32, number(month)?, number(day)?);
        if !(1..=12).contains(&month) || !(1..=length(year, month)).contains(&day) {
            return Err(fault());
        }
        Ok(Self { year, month, day })
    }

    /// Days since 1970-01-01.
    ///
    /// Years run from March, so that the leap day is the last one; 400 years are always 146 097 days.
    ///
    /// # Source
    /// Derived from the rules of the Gregorian calendar; checked day by day in the tests.
    pub fn days(self) -> i64 {
        let (year, month) = (i64::from(self.year), i64::from(self.month));
        let (year, month) = if month > 2 { (year, month - 3) } else { (year - 1, month + 9) };
        let day_of_year = (153 * month + 2) / 5 + i64::from(self.day) - 1;
        365 * year + year.div_euclid(4) - year.div_euclid(100) + year.div_euclid(400) + day_of_year - 719_468
    }

    /// The day so many days after 1970-01-01; the nearest one that can be written for days out of all reason.
    pub fn from_days(days: i64) -> Self {
        let shifted = days.clamp(-719_162, 2_932_896) + 719_468;
        let era = shifted.div_euclid(146_097);
        let day = shifted.rem_euclid(146_097);
        let year = (day - day / 1_460 + day / 36_524 - day / 146_096) / 365;
        let left = day - (365 * year + year / 4 - year / 100);
        let month = (5 * left + 2) / 153;
        let (day, year) = (left - (153 * month + 2) / 5 + 1, year + 400 * era);
        let (year, month) = if month < 10 { (year, month + 3) } else { (year + 1, month - 9) };
        Self { year: year as i32, month: month as u32, day: day as u32 }
    }

    /// The same day so many months later, or the last day of that month where it is shorter.
    #[must_use]
    pub fn plus_months(self, months: u32) -> Self {
        let month = self.month - 1 + months % 12;
        let year = self.year + (months / 12) as i32 + (month / 12) as i32;
        let month = month % 12 + 1;
        Self { year, month, day: self.day.min(length(year, month)) }
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

impl From<Date> for String {
    fn from(date: Date) -> Self {
        date.to_string()
    }
}

impl TryFrom<String> for Date {
    type Error = NoDate;

    fn try_from(text: String) -> Result<Self, NoDate> {
        Self::read(&text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(text: &str) -> Date {
        Date::read(text).unwrap()
    }

    #[test]
    fn days_follow_one_another() {
        assert_eq!(date("1970-01-01").days(), 0);
        assert_eq!(date("2000-03-01").days(), 11_017);
        let mut last = date("1599-12-31").days();
        for year in 1600..2410 {
            for month in 1..=12 {
                for day in 1..=length(year, month) {
                    let next = Date { year, month, day };
                    assert_eq!(next.days(), last + 1, "{next}");
                    assert_eq!(Date::from_days(next.days()), next);
                    assert_eq!(Date::read(&next.to_string()), Ok(next));
                    last += 1;
                }
            }
        }
    }

    #[test]
    fn months_end_where_they_must() {
        for (from, months, to) in [
            ("2026-01-31", 1, "2026-02-28"),
            ("2024-01-31", 1, "2024-02-29"),
            ("2024-02-29", 12, "2025-02-28"),
            ("2026-11-25", 0, "2026-11-25"),
            ("2026-11-25", 14, "2028-01-25"),
            ("2026-12-31", 36, "2029-12-31"),
        ] {
            assert_eq!(date(from).plus_months(months).to_string(), to);
        }
    }

    #[test]
    fn what_is_no_day_is_refused() {
        for text in
            ["", "2026", "2026-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "25.11.2026", "+026-01-01", "2026-01-32"]
        {
            assert!(Date::read(text).is_err(), "{text:?}");
        }
    }
}
