### What scripts say on the pages of the course. No variants here: scripts fill in places and nothing else.

## Practice cards

script-practice = Practice
script-one-mark = 1 mark
script-your-answer = Your answer
script-your-answer-to = Your answer to { $letter }
script-read-as = Read as { $amount }
script-marks-of = { $count } marks
script-earned = { $word }: { $earned } of { $of }.
script-verdict-right = Right
script-verdict-carried = Right so far
script-verdict-partial = Partly right
script-verdict-wrong = Not right
script-verdict-wrong-unit = Another unit is wanted
script-verdict-unreadable = Not understood
script-verdict-blank = No answer yet
script-check = Check
script-opened = { $hint }, opened below.
script-hint-of = Hint { $number } of { $all }
script-no-more-hints = No more hints
script-link = Link to this case
script-easier = Easier
script-harder = Harder
script-new-numbers = New numbers
script-none-of-skill = There is none of this skill.
script-new-case = { $title }, new case { $seed }.
script-not-loaded = The calculation could not be loaded; the question and its solution stand here as they are.

## Progress

script-sure = { $says }, { $sure } % sure, from { $answers } answers
script-sure-one = { $says }, { $sure } % sure, from { $answers } answer
script-comes-back = Comes back: { $due }.
script-practise = Practise
script-sits = { $sits } of { $all } firm
script-sits-one = { $sits } of { $all } firm
script-next = Next:
script-practise-now = Practise this now
script-no-progress = The calculation could not be loaded, so the progress cannot be shown; nothing noted is lost.
script-save = Save to a file
script-saved = Saved as progress.json.
script-file = File with progress
script-no-file = { $file } holds no progress; choose a file saved on this page.
script-loaded = Loaded { $count } answers.
script-not-kept = This device does not let the page keep anything.
script-load = Load from a file
script-clear = Clear
script-clear-all = Clear everything noted here
script-press-again = Press again to clear; it cannot be undone.
script-cleared = Cleared.

## Search, page, course on the device

script-first-places = The first { $most } of { $all } places
script-one-place = 1 place
script-places = { $all } places
script-no-search = The search could not be loaded; use the list of contents.
script-scrolls = Scrolls sideways
script-on-device = The course on this device
script-close = Close
script-newer = A newer version of this course is ready.
script-use-now = Use it now
script-kept = This course is now on your device: it works without a network.
