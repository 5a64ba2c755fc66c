### The frame of every page of the course: bar, contents, search, print.

course-title = Commissioning chain drives
course-about = Practise the checks and the numbers of a newly installed gear reducer with a chain drive.
frame-skip = Skip to the text
frame-skip-list = Skip to the list
frame-whole-course = Whole course
frame-contents = Contents
frame-units = Units
# "US units", of which only US is seen; the rest is for those who hear it.
frame-us = US
frame-si = SI
frame-both = Both
frame-units-unseen = units
frame-look = Look
frame-as-device = As device
frame-light = Light
frame-dark = Dark
frame-contrast = High contrast
frame-keys = Arrow keys
frame-keys-turn = Arrow keys turn pages
frame-keys-nothing = Arrow keys do nothing
frame-print = Print
frame-this-page = This page
frame-this-page-open = This page, solutions open
frame-turn = Previous and next chapter
frame-previous = Previous:
frame-next = Next:
frame-on-this-page = On this page
frame-search = Search
# The heading of a box of caution in a chapter.
frame-caution = Caution
frame-warning = Warning
frame-note = Note
frame-tip = Tip
frame-important = Important
# Stands under the heading of a chapter that is shown in English.
frame-not-translated = This chapter is not translated yet; it stands here in English.
