//! What reports say: on their pages and in the terminal.

use drivecourse_machine::language::Message;
use drivecourse_machine::messages;
use drivecourse_quiz::Verdict;

messages! { pub(crate) SAYS {
    // Headings of columns and rows.
    ACCEPTED = "report-accepted", "Accepted";
    ALL_MARKS = "report-all-marks", "All marks";
    ALONE = "report-alone", "Alone";
    ALPHA = "report-alpha", "Alpha";
    ASKED = "report-asked", "Asked";
    BLANK = "report-blank", "Blank";
    CHANGE = "report-change", "Change";
    CHANGED = "report-changed", "Changed";
    COMMON_TURN = "report-common-turn", "Most common wrong turn";
    DAY = "report-day", "Day";
    DISCRIMINATION = "report-discrimination", "Discrimination";
    DONE = "report-done", "What was done";
    EXAM = "report-exam", "Exam";
    EXPECTED = "report-expected", "Expected";
    FAMILY = "report-family", "Family";
    GROUP = "report-group", "Group";
    HANDED_IN = "report-handed-in", "Handed in";
    HOLDS_UNTIL = "report-holds-until", "Holds until";
    HOW = "report-how", "How";
    INTERVAL = "report-interval", "95 % interval";
    ITEM = "report-item", "Item";
    KR20 = "report-kr20", "KR-20";
    LATEST = "report-latest", "Latest";
    MARK = "report-mark", "Mark";
    MARKS = "report-marks", "Marks";
    MEAN_PAPER = "report-mean-paper", "Mean paper";
    NAME = "report-name", "Name";
    OF_ALL_MARKS = "report-of-all-marks", "Of all marks";
    ON_THE_WAY = "report-on-the-way", "Results on the way";
    OVER_ALL = "report-over-all", "Over all papers";
    PAPER = "report-paper", "Paper";
    PAPERS = "report-papers", "Papers";
    PASSED = "report-passed", "Passed";
    PEOPLE = "report-people", "People";
    QUESTIONS = "report-questions", "Questions";
    READ_AS = "report-read-as", "Read as";
    RECOGNISED = "report-recognised", "Recognised as";
    REMOVED = "report-removed", "Of these removed";
    RESULT = "report-result", "Result";
    SHARE = "report-share", "Share";
    SKILL = "report-skill", "Skill";
    STANDING = "report-standing", "Standing";
    TIMES = "report-times", "Times";
    UNREAD = "report-unread", "Unread";
    VARIANTS = "report-variants", "Variants";
    WHAT = "report-what", "What";
    WHY = "report-why", "Why";
    WRITTEN = "report-written", "Written";
    WRONG_MOST = "report-wrong-most", "What went wrong most often";

    // Titles and headings.
    CLASS = "report-class", "Class";
    CLASS_OF = "report-class-of", "Class: {group}";
    DUE = "report-due", "Due";
    DUE_FOR_PAPER = "report-due-for-paper", "Due for a new paper";
    ITEMS = "report-items", "Items";
    QUESTION_OF = "report-question-of", "Question {number} ({part}) of paper {code}";
    PAPER_QUESTION = "report-paper-question", "Paper {code}, question {number} ({part})";
    CAUTION = "report-caution", "Caution: talk these over before any work on a machine";
    EARLIEST = "report-earliest", "The earliest first";
    HARDEST_FIRST = "report-hardest-first", "Items, hardest first";
    HARDEST_SHARE = "report-hardest-share", "Hardest items: share of answers that earned all marks, with its 95 % interval";
    MAY_DO = "report-may-do", "What this person may do";
    NOT_ALONE = "report-not-alone", "Must not work alone yet";
    PRACTISE_NEXT = "report-practise-next", "Practise next, most needed first";
    READY = "report-ready", "Ready";
    RELIABILITY = "report-reliability", "Reliability";
    SHARE_OF_ALL_MARKS = "report-share-of-all-marks", "Share that earned all marks";
    SHARE_OF_SKILLS = "report-share-of-skills", "Share of the marks of each skill";
    SHARE_ON_PAPERS = "report-share-on-papers", "Share of the marks on each paper";
    SKILLS_AND_CHANGE = "report-skills-and-change", "Skills on the latest day, and the change since the first";
    SKILLS_WEAKEST = "report-skills-weakest", "Skills, weakest first";
    TOTALS = "report-totals", "Totals";
    VARIANTS_SHARE = "report-variants-share", "Variants: share that earned all marks";
    WENT_WRONG = "report-went-wrong", "What went wrong, most often first";
    AS_HANDED_IN = "report-as-handed-in", "As handed in on {day}";
    CORRECTION = "report-correction", "Correction {number}, recorded {day} by {by}: {reason}";

    // Sentences and notes.
    ABOUT_SAFETY = "report-about-safety", "It is about safety: missing it fails the paper.";
    ALPHA_IS = "report-alpha-is", "Alpha of the shares of marks, and KR-20 of all marks or not, each place of the paper as an item; every variance with the number of papers as divisor. Fewer than ten papers say nothing of an exam, and get none.";
    MEAN_PAPER_IS = "report-mean-paper-is", "Mean paper: the share of its marks that a paper earned, on average, each paper counting alike; papers of people whose data was taken out on request are not among them.";
    OF_ALL_MARKS_ARE = "report-of-all-marks-are", "Of all marks: what the papers handed in earned together, as a share of what they could earn; a paper with more marks counts more.";
    AS_OF = "report-as-of", "As of {day}.";
    CHANGED_TO = "report-changed-to", "to {earned} of {of} by {by} on {day}: {reason}";
    COLUMNS_ARE = "report-columns-are", "Marks: share of the marks that was earned. Discrimination: correlation with the rest of the paper, the item itself left out; near or below nought, look at the item. Variants: whether machines of different families make it equally hard (chi-square).";
    CORRECTED = "report-corrected", "Corrected {times} times.";
    COUNTS_NOW = "report-counts-now", "It counts {earned} of {of} now.";
    ENOUGH_IS = "report-enough", "enough: {share}";
    EXACTLY_THAT = "report-exactly-that", "exactly that";
    FEW_ANSWERS = "report-few-answers", "few answers";
    FIRST_TIME = "report-first-time", "first time";
    FROM_TO = "report-from-to", "{low} to {high}";
    LAPSED_OR_LAPSING = "report-lapsed-or-lapsing", "Lapsed on {day}, or lapsing within {months} months of it.";
    LATEST_DECIDES = "report-latest-decides", "The latest paper of each exam decides. Nobody works alone on a drive without the site's own permission.";
    MARKS_CHANGED = "report-marks-changed", "{count} marks changed.";
    NO_DIFFERENCE = "report-no-difference", "no difference shown";
    NO_KNOWN_TURN = "report-no-known-turn", "Nothing that matches a known wrong turn.";
    NOBODY = "report-nobody", "Nobody.";
    NOT_YET = "report-not-yet", "not yet";
    NOTHING = "report-nothing", "nothing";
    NOTHING_STANDS_OUT = "report-nothing-stands-out", "Nothing stands out.";
    NOTHING_TO_COMPARE = "report-nothing-to-compare", "nothing to compare";
    OF = "report-of", "{earned} of {of}";
    OF_MARKS = "report-of-marks", "{earned} of {of} marks";
    PASSES = "report-passes", "passes: {share}";
    POINTS = "report-points", "{points} points";
    REMOVED_COUNT = "report-removed-count", "People whose data was taken out on request are counted here, and nowhere by name.";
    UNEQUALLY_HARD = "report-unequal", "unequal";
    YES_ON_ONE = "report-yes-on-one", "yes, on 1 paper ({answers})";
    YES_ON = "report-yes-on", "yes, on {papers} papers ({answers})";
    ONE_ANSWER = "report-one-answer", "1 answer";
    ANSWERS = "report-answers", "{count} answers";
    YES_RESTS_ON = "report-yes-rests-on", "Beside “yes” stands on how many papers it rests, passed one after the other and still holding, and on how many answers. One paper alone is little to go by.";
    NONE_HANDED_IN = "report-none-handed-in", "No paper that was handed in is in the records.";
    NONE_OF_THESE = "report-none-of-these", "No paper of that group or exam that was handed in is in the records; look at the names after --group and --exam.";
    NONE_ASKED = "report-none-asked", "No paper in the records asks such an item; look at the names after --item and --family.";
    ONE_LATER = "report-one-later", "No paper was handed in by then; there is one, of {day}.";
    MORE_LATER = "report-more-later", "No paper was handed in by then; there are {count}, the first of {day}.";
    WRITTEN_TO = "report-written-to", "written to {file}";

    // How an answer turned out.
    RIGHT = "report-verdict-right", "right";
    CARRIED = "report-verdict-carried", "carried";
    PARTIAL = "report-verdict-partial", "partial";
    WRONG = "report-verdict-wrong", "wrong";
    WRONG_UNIT = "report-verdict-wrong-unit", "wrong-unit";
    UNREADABLE = "report-verdict-unreadable", "unreadable";
    LEFT_BLANK = "report-verdict-blank", "blank";
} }

/// What is said of a verdict.
pub(crate) fn of_verdict(verdict: Verdict) -> Message {
    match verdict {
        Verdict::Right => RIGHT,
        Verdict::Carried => CARRIED,
        Verdict::Partial => PARTIAL,
        Verdict::Wrong => WRONG,
        Verdict::WrongUnit => WRONG_UNIT,
        Verdict::Unreadable => UNREADABLE,
        Verdict::Blank => LEFT_BLANK,
    }
}
