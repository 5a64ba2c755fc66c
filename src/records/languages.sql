-- The language that an exam's papers speak, where it is not English.
CREATE TABLE IF NOT EXISTS exam_language (
    exam INTEGER PRIMARY KEY REFERENCES exam,
    tag TEXT NOT NULL                   -- BCP 47
) STRICT;
CREATE TRIGGER IF NOT EXISTS exam_language_stays BEFORE UPDATE ON exam_language BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
CREATE TRIGGER IF NOT EXISTS exam_language_kept BEFORE DELETE ON exam_language
    BEGIN SELECT raise(ABORT, 'records are only added to: nothing in them is changed or taken out'); END;
