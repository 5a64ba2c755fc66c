### What the program has to know of the language.

# The mark that parts decimals in what is written and read: . or ,
decimal-mark = .
