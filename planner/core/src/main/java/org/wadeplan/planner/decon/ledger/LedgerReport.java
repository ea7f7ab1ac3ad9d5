package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.drying.DryEstimate;
import org.wadeplan.planner.decon.drying.DryingForecast;
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
     * @param drying for each stretch of drying, and at the moment where it is wet, when it may be dry to the touch: estimates,
     *     by which nothing is released
     */
    public record LaneReport(
            String id,
            String label,
            boolean item,
            int pieces,
            List<Touch> touches,
            List<Treated> treated,
            List<StateSpan> states,
            Optional<LaneMoment> moment,
            List<Drying> drying) {}

    /** When something that was wet until then may be dry to the touch. */
    public record Drying(Instant wetUntil, DryEstimate estimate) {}

    public static LedgerReport of(Round round, ExposureLedger ledger, String week, Optional<Instant> at) {
        OpenExposures exposures = new OpenExposures(round);
        return new LedgerReport(
                week,
                at,
                ledger.lanes().stream()
                        .map(lane -> report(round, lane, exposures, at))
                        .toList());
    }

    private static LaneReport report(Round round, Lane lane, OpenExposures exposures, Optional<Instant> at) {
        List<StateSpan> states = LaneStates.of(round, lane);
        return new LaneReport(
                lane.id(),
                lane.label(),
                lane.item(),
                lane.pieces(),
                lane.touches(),
                lane.treated(),
                states,
                at.map(time -> LaneMoment.of(round, lane, exposures, time)),
                drying(round, lane, states, at));
    }

    private static List<Drying> drying(Round round, Lane lane, List<StateSpan> states, Optional<Instant> at) {
        DryingForecast forecast = new DryingForecast(round);
        return states.stream()
                .filter(span -> span.state() == KitState.DRYING
                        || (span.state() == KitState.DIRTY
                                && at.filter(span::holds).isPresent()))
                .filter(span -> at.map(span::holds).orElse(true))
                .map(span -> new Drying(span.from(), forecast.of(lane.kit(), span.from())))
                .toList();
    }

    /** Only this lane. */
    public LedgerReport only(String id) {
        return new LedgerReport(
                week, at, lanes.stream().filter(lane -> lane.id().equals(id)).toList());
    }
}
