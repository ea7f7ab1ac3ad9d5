package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Round;

/**
 * Something at one moment.
 *
 * @param since how long it has been in this state
 * @param exposedTo waters touched since it was last released
 * @param wetSince when it first got wet since then; empty where it did not
 * @param released when the treatment at hand releases it, or released it; empty where it is not being treated
 * @param releasedFor waters into which it may go at this moment, as far as the ledger knows
 */
public record LaneMoment(
        String id,
        Instant at,
        KitState state,
        Instant since,
        String why,
        List<String> exposedTo,
        Optional<Instant> wetSince,
        Optional<Instant> released,
        List<String> releasedFor) {

    public static LaneMoment of(Round round, Lane lane, OpenExposures exposures, Instant at) {
        List<StateSpan> spans = LaneStates.of(round, lane);
        StateSpan span = spans.stream()
                .filter(one -> one.holds(at))
                .reduce((first, second) -> second)
                .orElse(spans.get(0));
        Optional<Treated> treated =
                OpenExposures.lastTreated(lane, at).filter(one -> !one.credits().isEmpty());
        Optional<Instant> clean = treated.flatMap(Treated::released).filter(released -> !released.isAfter(at));
        List<Touch> since = lane.touchesBefore(at.plusMillis(1)).stream()
                .filter(touch ->
                        clean.filter(time -> touch.from().isBefore(time)).isEmpty())
                .toList();
        boolean goesOut = span.state() == KitState.CLEAN_DRY || span.state() == KitState.RELEASED;
        return new LaneMoment(
                lane.id(),
                at,
                span.state(),
                span.from(),
                span.why(),
                since.stream().map(Touch::water).distinct().sorted().toList(),
                since.stream().map(Touch::from).min(Comparator.naturalOrder()),
                treated.filter(one ->
                                since.stream().noneMatch(touch -> touch.from().isAfter(one.start())))
                        .flatMap(Treated::released),
                goesOut ? exposures.releasedFor(lane, at) : List.of());
    }
}
