### Cards and reference tables in the chapters.

card-practice = Practice: { $title }
card-worked = Worked example: { $title }
# A self-check's heading.
card-questions =
    { $count ->
        [1] { $count } question
       *[other] { $count } questions
    }
card-case = { $machine }, case { $seed }
card-whose-made-up = This machine is made up. At a drive take its own plates and drawings and your own readings, never these numbers.
card-whose-plant = This is one of the plant's machines; its load and readings are made up. At the machine itself take what you read there, never these numbers.
card-against = Asked here is what is usual. At your plant this is laid down, and it goes before: { $value }.
card-whose-program = This machine is made up and none of the plant's. At a drive take its own plates and drawings and your own readings, never these numbers.
card-the-question = The question
card-step-by-step = Step by step
card-answers = Answers
card-answer-and-solution = Answer and worked solution
card-values = The values in the picture
card-givens = What you can see and measure
card-hint = Hint
card-hint-for = Hint for { $letter }
card-hint-steps = the steps
card-hint-formula = the formula
card-letters-in-order = Answer with the letters in order.
card-unit = Unit of the answer: { $unit }.
card-plain-number = The answer is a plain number.
card-go-on = Go on from your answer to { $parts }.
card-answer = Answer:
card-accepted = accepted { $tolerance }
card-other-method = { $answer } by another accepted method earns the mark too.
card-something-else = If you found something else
reference-or-unit = or
reference-symbols = Symbols and units
reference-how-known = How it is known
