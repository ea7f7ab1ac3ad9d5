package org.wadeplan.planner.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Permit.PermitStatus;
import org.wadeplan.planner.round.Permit.TakeCap;

/** {@code permits.csv}: what may be fished where, how and when. */
final class PermitTable {

    static final TableKind<Permit> KIND = TableKind.named("permits", "permit")
            .required("permit catchment methods valid_from valid_until status")
            .optional("closed_from closed_until closure_reason notify_working_days notified_on "
                    + "take_species take_cap take_used note")
            .makes(PermitTable::permit);

    private static final Words<PermitStatus> STATUSES = Words.of(PermitStatus.class);
    private static final Range NOTICE_DAYS = Range.of(0, 366, "working days");

    private PermitTable() {}

    private static Permit permit(Row row) {
        Permit permit = new Permit(
                row.text("permit"),
                row.text("catchment"),
                row.list("methods"),
                row.date("valid_from"),
                row.date("valid_until"),
                row.word("status", STATUSES),
                row.optionalDate("closed_from"),
                row.optionalDate("closed_until"),
                row.optionalText("closure_reason"),
                row.optionalInteger("notify_working_days", NOTICE_DAYS),
                row.optionalDate("notified_on"),
                takeCap(row),
                row.optionalText("note"));
        Spans.check(
                row, "valid_from", Optional.of(permit.validFrom()), "valid_until", Optional.of(permit.validUntil()));
        Spans.check(row, "closed_from", permit.closedFrom(), "closed_until", permit.closedUntil());
        if (row.raw("closed_from").isEmpty() != row.raw("closed_until").isEmpty()) {
            row.refuse(
                    "closed_from",
                    new Fault(
                            "closure-half",
                            "the closed season has only one of its two days",
                            "closed_from and closed_until together, or neither",
                            "add the other day"));
        }
        return permit;
    }

    private static Optional<TakeCap> takeCap(Row row) {
        Optional<String> species = row.optionalText("take_species");
        OptionalInt cap = row.optionalInteger("take_cap", Range.COUNT);
        OptionalInt used = row.optionalInteger("take_used", Range.COUNT);
        if (species.isPresent() && cap.isPresent() && used.isPresent()) {
            return Optional.of(new TakeCap(species.get(), cap.getAsInt(), used.getAsInt()));
        }
        boolean anyCell = List.of("take_species", "take_cap", "take_used").stream()
                .anyMatch(column -> !row.raw(column).isEmpty());
        if (anyCell) {
            row.refuse(
                    "take_cap",
                    new Fault(
                            "take-cap-half",
                            "the cap on handling is not whole",
                            "take_species, take_cap and take_used together, or none",
                            "fill in what is missing; write 0 where none were handled yet"));
        }
        return Optional.empty();
    }
}
