### Papers, keys, pages to answer on a screen, results.

## On several pages

marks =
    { $count ->
        [1] { $count } mark
       *[other] { $count } marks
    }
table-what = What
table-symbol = Symbol
table-value = Value
table-unit = Unit
# The name of a table that is wider than a phone.
table-scrolls = { $heading }, scrolls sideways

## The foot of a sheet: "Sheet 1 of 3"

sheet-paper = Paper { $code }
sheet-sheet = Sheet
sheet-of = of

# In a PDF, where each paper is numbered by itself.
print-page = Page { $page } of { $pages }

## A candidate's paper

# The title of the file.
paper-title = { $exam }: paper { $code }, { $candidate }
paper-plant = Plant
paper-candidate = Candidate
paper-code = Paper code
paper-date = Date
paper-marks = Marks
paper-time-allowed = Time allowed
paper-minutes = { $minutes } minutes
paper-caution = Caution
paper-policy = How this paper is marked
paper-question = Question { $number }: { $title }
# The heading of the table of what is given.
paper-given = Given
paper-other-units = Other units
# In the column of the other units: the value is the same there.
paper-the-same = the same
# Before a line to write on, for the answer to one part and for the only answer.
paper-answer-to = Answer { $label }
paper-answer = Answer
paper-way = Results on the way
paper-each-unit = each with its unit
# Behind the line for an answer.
paper-with-unit = with its unit ({ $unit } or another)
# The paper's code follows.
paper-end = End of paper

## Several papers or keys in one file

bundle-papers = { $exam }: papers
bundle-large = { $exam }: papers in large print
bundle-keys = { $exam }: keys

## A page to answer on a screen

screen-no-script = This page needs scripting to keep what you write. Ask for the paper on paper.
screen-keeping = How your answers are kept
screen-stays = What you write stays on this device, in this browser, from letter to letter. Nothing is sent anywhere.
screen-save-and-hand-in = When you have finished, save the answers to a file at the end of this page and hand that file in.
screen-take-back = Take the choice back
screen-semicolons = each with its unit, semicolons between
screen-hand-in = Hand in
screen-save = Save the answers to a file
screen-load = Take answers from a file saved before:
screen-count = { $written } of { $all } parts answered.
screen-kept = Kept on this device.
screen-not-kept = This browser cannot keep them: save them to a file before you leave this page.
screen-saved = Saved as answers-{ $code }.json. Hand that file in.
screen-took = Took { $count } answers from { $file }.
screen-none = { $file } holds no answers to paper { $code }.

## The examiner's key

key-title = Key to paper { $code }: { $exam }
key-head = Examiner’s key: { $exam }
key-made-with = Made with
key-machine = Machine: { $machine }
key-only = For the examiner only.
key-apart = Keep it apart from the papers.
# Between an answer and the same in other units.
key-or = or
key-accepted = accepted { $tolerance }
key-source = Source: { $source }
key-wrong = Wrong answers to expect
key-answer = Answer
key-how = How people come by it

## One candidate's result

result-title = Result of { $candidate }: { $exam }
result-head = Result: { $exam }
result-earned = { $earned } of { $marks }
result-outcome = Outcome
result-caution = Caution: talk these over before any work on a machine
result-each-answer = Each answer
result-your-answer = Your answer:
result-none = none
result-expected = Expected:
result-marks = Marks:
result-practise-next = Practise next

## The results of a class

class-title = Class results: { $exam }
class-paper = Paper
class-total = Total
class-wrong = What went wrong
class-done = What was done
class-where = Where
class-many = How many
class-who = Who
class-nothing = Nothing was found that matches a known wrong turn.
class-practice = Who should practise what
class-topics = Practise, most needed first
class-nobody = Nobody needs more practice than the course gives.
class-remarks = Remarks
