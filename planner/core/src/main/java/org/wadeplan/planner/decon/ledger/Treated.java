package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;

/**
 * One cleaning, planned or as it was really done.
 *
 * @param what the steps in short: {@code brush 20, soak 40 (60 °C), rinse 30}
 * @param crewFree when nobody is busy with it any more
 * @param released when it is dry for as long as the evidence asks; empty where that is not known yet, or where the record was
 *     refused
 * @param credits what it covers, each from when; none where the record was refused
 * @param reasons why a record was refused, or what it does not cover; empty for what is planned
 */
public record Treated(
        String what,
        String by,
        Instant start,
        Instant crewFree,
        Optional<Instant> released,
        List<Credit> credits,
        List<DeconStep> steps,
        boolean onRecord,
        List<String> reasons) {

    /** One pest on one material that a cleaning covers, and from when that counts. */
    public record Credit(Turnaround.Cover cover, Instant from) {}

    public boolean refused() {
        return onRecord && credits.isEmpty();
    }
}
