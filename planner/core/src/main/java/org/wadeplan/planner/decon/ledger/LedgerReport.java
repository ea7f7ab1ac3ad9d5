package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Round;

/**
 * The ledger as it is shown.
 *
 * @param week which week it follows, in words
 * @param at the moment that was asked for; empty for the whole week
 * @param lanes those that were asked for
 */
public record LedgerReport(String week, Optional<Instant> at, List<LaneReport> lanes) {

    /**
     * One kit set or item.
     *
     * @param states one after the other through the week
     * @param moment where it stands at the moment that was asked for
     */
    public record LaneReport(
            String id,
            String label,
            boolean item,
            int pieces,
            List<Touch> touches,
            List<Treated> treated,
            List<StateSpan> states,
            Optional<LaneMoment> moment) {}

    public static LedgerReport of(Round round, ExposureLedger ledger, String week, Optional<Instant> at) {
        OpenExposures exposures = new OpenExposures(round);
        return new LedgerReport(
                week,
                at,
                ledger.lanes().stream()
                        .map(lane -> new LaneReport(
                                lane.id(),
                                lane.label(),
                                lane.item(),
                                lane.pieces(),
                                lane.touches(),
                                lane.treated(),
                                LaneStates.of(round, lane),
                                at.map(time -> LaneMoment.of(round, lane, exposures, time))))
                        .toList());
    }

    /** Only this lane. */
    public LedgerReport only(String id) {
        return new LedgerReport(
                week, at, lanes.stream().filter(lane -> lane.id().equals(id)).toList());
    }
}
