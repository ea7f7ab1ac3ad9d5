package org.wadeplan.planner.files;

import org.wadeplan.planner.round.Validity;

/** The columns {@code valid_from}, {@code valid_until} and {@code jurisdiction} of a rule or a row of evidence. */
final class Validities {

    private Validities() {}

    static Validity of(Row row) {
        Validity validity = new Validity(
                row.optionalDate("valid_from"), row.optionalDate("valid_until"), row.optionalText("jurisdiction"));
        Spans.check(row, "valid_from", validity.from(), "valid_until", validity.until());
        return validity;
    }
}
