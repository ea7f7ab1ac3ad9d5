package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where and when a rule or a row of evidence is in force, both days included. Rules of place change: one that was right
 * two years ago may be superseded today.
 *
 * @param from empty: from the beginning
 * @param until empty: until somebody ends it
 * @param jurisdiction the place whose rule it is, such as {@code NZ}; empty: everywhere
 */
public record Validity(Optional<LocalDate> from, Optional<LocalDate> until, Optional<String> jurisdiction) {

    /** In force everywhere and always. */
    public static final Validity ALWAYS = new Validity(Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether it is in force on a day for a round of this jurisdiction; a rule of a place counts nowhere else. */
    public boolean holds(LocalDate day, Optional<String> where) {
        boolean begun = from.map(first -> !day.isBefore(first)).orElse(true);
        boolean over = until.map(day::isAfter).orElse(false);
        boolean here = jurisdiction.isEmpty() || jurisdiction.equals(where);
        return begun && !over && here;
    }
}
