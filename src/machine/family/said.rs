//! What is said of a family's file that cannot be used.

use crate::messages;

messages! { pub(crate) SAYS {
    BOTH = "problem-family-both", "{name} is both fixed and drawn.";
    BOTH_MEND = "problem-family-both-mend", "Take it out of [fixed] or out of [draw].";
    POOL_ROW = "problem-family-pool-row", "This [[pool]] row does not name the same quantities as the first one.";
    POOL_ROW_MEND = "problem-family-pool-row-mend", "Give every row of the table of machines the same quantities.";
    TWO_TABLES = "problem-family-two-tables", "The table of machines stands both in a file of its own and here, under [[pool]].";
    TWO_TABLES_MEND = "problem-family-two-tables-mend", "Take one of them out.";
    NO_TABLE = "problem-family-no-table", "There is no table {name} beside this file.";
    NO_TABLE_MEND = "problem-family-no-table-mend", "Put it there, as CSV in UTF-8, or mend its name.";
    TWO_FAULTS = "problem-family-two-faults", "There are two faults called {name}.";
    TWO_FAULTS_MEND = "problem-family-two-faults-mend", "Give one of them another id.";
    WEIGHT = "problem-family-weight", "This fault's weight is not a positive number.";
    WEIGHT_MEND = "problem-family-weight-mend", "Write weight = 1, or leave it out.";
    NO_LIKE = "problem-family-no-like", "There is no sound family {name} for this one to be like.";
    NO_LIKE_AT_ALL = "problem-family-no-like-at-all", "There is none yet. Let this one say everything itself, without `like`.";
    NO_LIKE_MEND = "problem-family-no-like-mend", "There are {names}. Name one of them, or mend first the one that you mean.";
    WITHOUT = "problem-family-without", "There is no other family to leave a fault out of.";
    WITHOUT_MEND = "problem-family-without-mend", "Name it with `like`.";
    TOPICS = "problem-family-topics", "There is no other family to take topics over from.";
    NO_TOPIC = "problem-family-no-topic", "There is no topic called {name}.";
    TOPICS_ARE = "problem-family-topics-are", "The topics are {names}.";
    SHARES = "problem-family-shares", "The shares under [faults] must lie between 0 and 1.";
    SHARES_MEND = "problem-family-shares-mend", "Write healthy = 0.4, say, for four machines in ten.";
    DOTTED = "problem-family-dotted", "A name with a point in it stands in quotation marks; without them, {name} is the beginning of a table.";
    NOT_QUOTED = "problem-family-not-quoted", "A value of {name} is text and stands in quotation marks.";
    WRITE_SO = "problem-family-write-so", "Write it so:\n{lines}";
    LIST = "problem-family-list", "`{key}` wants a list.";
    LIST_MEND = "problem-family-list-mend", "Write {key} = [\"...\", \"...\"].";
    ORDER = "problem-family-order", "The first value of `between` is larger than the second.";
    ORDER_MEND = "problem-family-order-mend", "Write the smaller one first.";
    TWO_VALUES = "problem-family-two-values", "`between` wants two values.";
    TWO_VALUES_MEND = "problem-family-two-values-mend", "Write between = [\"least\", \"most\"].";
    NO_CHOICE = "problem-family-no-choice", "There is nothing to choose from.";
    NO_CHOICE_MEND = "problem-family-no-choice-mend", "Put at least one value in the list.";
    NO_DRAW = "problem-family-no-draw", "A draw with {keys} is not known.";
    EMPTY_DRAW = "problem-family-empty-draw", "A draw with nothing in it is not known.";
    STATED_IN_DRAW = "problem-family-stated-in-draw", "A value with its source stands under [fixed]: move the line up there.";
    NO_DRAW_MEND = "problem-family-no-draw-mend", "Use { between = [least, most] }, { choose = [...] }, { about = middle, spread = deviation } or { of = quantity, between = [least, most] }.";
    STATED = "problem-family-stated", "A fixed value is a value, or a value with its source.";
    STATED_MEND = "problem-family-stated-mend", "Write \"...\", or { value = \"...\", source = \"...\", because = \"...\" }; `because` may be left out.";
    NO_SHARE = "problem-family-no-share", "{name} cannot be a share of {other}.";
    NO_SHARE_MEND = "problem-family-no-share-mend", "A share needs two quantities of one kind that can be multiplied, such as two lengths.";
    TWO_SHARES = "problem-family-two-shares", "`between` wants two shares, the smaller first.";
    TWO_SHARES_MEND = "problem-family-two-shares-mend", "Write [\"90 %\", \"105 %\"].";
    UNREADABLE = "problem-family-unreadable", "{written} cannot be read: {why}";
    UNREADABLE_AS = "problem-family-unreadable-as", "{written} cannot be read as {name}: {why}";
    TAKES = "problem-family-takes", "It takes {kind}.";
    NO_BETWEEN = "problem-family-no-between", "No value is at least the one and at most the other.";
    NO_BETWEEN_MEND = "problem-family-no-between-mend", "Swap at_least and at_most.";
    HEALTHY = "problem-family-healthy", "A limit of a fault cannot be asked of healthy machines.";
    HEALTHY_MEND = "problem-family-healthy-mend", "Take out healthy = true, or move the limit out of the fault.";
    NO_BOUND = "problem-family-no-bound", "This limit bounds nothing.";
    NO_BOUND_MEND = "problem-family-no-bound-mend", "Give it at_least, at_most, or both.";
} }
