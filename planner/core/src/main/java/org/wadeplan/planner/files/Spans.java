package org.wadeplan.planner.files;

import java.util.Optional;

/** Checks that what starts in one cell does not end before that in another. */
final class Spans {

    private Spans() {}

    /** Says nothing where an end is not known or was already reported. */
    static <T extends Comparable<? super T>> void check(
            Row row, String fromColumn, Optional<T> from, String untilColumn, Optional<T> until) {
        boolean known = row.whole() && from.isPresent() && until.isPresent();
        if (known && until.get().compareTo(from.get()) < 0) {
            row.refuse(
                    untilColumn,
                    new Fault(
                            "ends-before-start",
                            row.raw(untilColumn) + " is before " + fromColumn + ", " + row.raw(fromColumn),
                            "the same or later",
                            "check both; they may be swapped"));
        }
    }
}
