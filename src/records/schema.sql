-- Format 1. Rows are added; the triggers below refuse every other change, save the removal of one person's rows.

-- An exam as it was printed: its digest is that of the whole exam record.
CREATE TABLE exam (
    id INTEGER PRIMARY KEY,
    digest TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    title TEXT NOT NULL,
    pass REAL NOT NULL,
    months INTEGER                      -- how long a pass holds; NULL for ever
) STRICT;

CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE            -- the roster's id
) STRICT;

CREATE TABLE paper (
    id INTEGER PRIMARY KEY,
    exam INTEGER NOT NULL REFERENCES exam,
    code TEXT NOT NULL,
    person INTEGER NOT NULL REFERENCES person,
    name TEXT NOT NULL,                 -- as printed on this paper
    team TEXT NOT NULL,
    sitting INTEGER NOT NULL,
    UNIQUE (exam, code)
) STRICT;
CREATE INDEX paper_person ON paper (person);

-- What was asked, once for all papers that ask it.
CREATE TABLE item (
    id INTEGER PRIMARY KEY,
    item TEXT NOT NULL,
    family TEXT NOT NULL,
    title TEXT NOT NULL,
    topic TEXT NOT NULL,
    skill TEXT NOT NULL,
    safety INTEGER NOT NULL,
    UNIQUE (item, family, title, topic, skill, safety)
) STRICT;

CREATE TABLE cause (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    says TEXT NOT NULL,
    UNIQUE (name, says)
) STRICT;

-- Answers to a paper as they were graded. A later revision takes the place of an earlier one, which stays.
CREATE TABLE attempt (
    id INTEGER PRIMARY KEY,
    paper INTEGER NOT NULL REFERENCES paper,
    revision INTEGER NOT NULL,
    digest TEXT NOT NULL,               -- of answers and marks
    sat TEXT NOT NULL,
    recorded TEXT NOT NULL,
    reason TEXT NOT NULL,               -- of a correction; empty for the first
    author TEXT NOT NULL,
    UNIQUE (paper, revision)
) STRICT;

CREATE TABLE answer (
    attempt INTEGER NOT NULL REFERENCES attempt,
    question INTEGER NOT NULL,
    part INTEGER NOT NULL,
    item INTEGER NOT NULL REFERENCES item,
    asked TEXT NOT NULL,
    written TEXT NOT NULL,
    steps TEXT NOT NULL,                -- results on the way; empty where none were asked for
    read_as TEXT NOT NULL,
    verdict TEXT NOT NULL,
    earned INTEGER NOT NULL,
    most INTEGER NOT NULL,
    expected TEXT NOT NULL,
    tolerance TEXT NOT NULL,
    says TEXT NOT NULL,
    cause INTEGER REFERENCES cause,
    PRIMARY KEY (attempt, question, part)
) STRICT, WITHOUT ROWID;

-- A mark changed by an assessor; the last one counts, the mark in `answer` stays as it is.
CREATE TABLE changed (
    id INTEGER PRIMARY KEY,
    attempt INTEGER NOT NULL,
    question INTEGER NOT NULL,
    part INTEGER NOT NULL,
    earned INTEGER NOT NULL,
    reason TEXT NOT NULL,
    author TEXT NOT NULL,
    made TEXT NOT NULL,
    FOREIGN KEY (attempt, question, part) REFERENCES answer
) STRICT;
CREATE INDEX changed_place ON changed (attempt, question, part);

-- Papers whose data was taken out: a digest, so that a repeated import does not bring them back.
CREATE TABLE forgotten (mark TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;

-- Totals of what was taken out: over all removed people together.
CREATE TABLE kept_exam (
    exam INTEGER PRIMARY KEY REFERENCES exam,
    papers INTEGER NOT NULL,
    handed_in INTEGER NOT NULL,
    passed INTEGER NOT NULL,
    earned INTEGER NOT NULL,
    most INTEGER NOT NULL
) STRICT;
CREATE TABLE kept_item (
    item INTEGER PRIMARY KEY REFERENCES item,
    asked INTEGER NOT NULL,
    full INTEGER NOT NULL,
    earned INTEGER NOT NULL,
    most INTEGER NOT NULL
) STRICT;
CREATE TABLE kept_cause (
    item INTEGER NOT NULL REFERENCES item,
    cause INTEGER NOT NULL REFERENCES cause,
    times INTEGER NOT NULL,
    PRIMARY KEY (item, cause)
) STRICT, WITHOUT ROWID;

-- Holds a row only while that person's data is being taken out.
CREATE TABLE removal (person INTEGER PRIMARY KEY) STRICT;

CREATE VIEW counted AS
    SELECT * FROM attempt WHERE revision = (SELECT max(other.revision) FROM attempt AS other WHERE other.paper = attempt.paper);

CREATE TRIGGER exam_stays BEFORE UPDATE ON exam BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER exam_kept BEFORE DELETE ON exam
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER person_stays BEFORE UPDATE ON person BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER person_kept BEFORE DELETE ON person
    WHEN NOT EXISTS (SELECT 1 FROM removal WHERE person = OLD.id)
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER paper_stays BEFORE UPDATE ON paper BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER paper_kept BEFORE DELETE ON paper
    WHEN NOT EXISTS (SELECT 1 FROM removal WHERE person = OLD.person)
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER item_stays BEFORE UPDATE ON item BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER item_kept BEFORE DELETE ON item
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER cause_stays BEFORE UPDATE ON cause BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER cause_kept BEFORE DELETE ON cause
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER attempt_stays BEFORE UPDATE ON attempt BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER attempt_kept BEFORE DELETE ON attempt
    WHEN NOT EXISTS (SELECT 1 FROM removal JOIN paper USING (person) WHERE paper.id = OLD.paper)
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER answer_stays BEFORE UPDATE ON answer BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER answer_kept BEFORE DELETE ON answer
    WHEN NOT EXISTS (SELECT 1 FROM removal JOIN paper USING (person) JOIN attempt ON attempt.paper = paper.id WHERE attempt.id = OLD.attempt)
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER changed_stays BEFORE UPDATE ON changed BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER changed_kept BEFORE DELETE ON changed
    WHEN NOT EXISTS (SELECT 1 FROM removal JOIN paper USING (person) JOIN attempt ON attempt.paper = paper.id WHERE attempt.id = OLD.attempt)
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;

CREATE TRIGGER forgotten_stays BEFORE UPDATE ON forgotten BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER forgotten_kept BEFORE DELETE ON forgotten
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
