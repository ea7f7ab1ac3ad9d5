package org.wadeplan.planner.decon.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.decon.trace.TraceReport.Spread;
import org.wadeplan.planner.round.Round;

/** Where the pest may have gone on to, with anything that was in the water since its last clear visit. */
final class SpreadTrace {

    private final Round round;
    private final FindSpan span;

    SpreadTrace(Round round, FindSpan span) {
        this.round = round;
        this.span = span;
    }

    /** By lane, then time; one for each visit to another water without a supported treatment in between. */
    List<Spread> of(ExposureLedger ledger) {
        List<Spread> spreads = new ArrayList<>();
        for (Lane lane : ledger.lanes()) {
            for (Touch touch : lane.touches()) {
                if (!touch.water().equals(span.find().water())) {
                    source(lane, touch).ifPresent(from -> spreads.add(spread(lane, touch, from)));
                }
            }
        }
        return List.copyOf(spreads);
    }

    /** Where it was in the water of the find before a touch, untreated since. */
    private Optional<Touch> source(Lane lane, Touch touch) {
        return lane.touches().stream()
                .filter(in -> in.water().equals(span.find().water())
                        && !in.until().isAfter(touch.from())
                        && span.reaches(in.until(), round.header().zone()))
                .filter(in -> !Support.treated(round, lane, in, span.find().pest(), touch.from()))
                .findFirst();
    }

    private Spread spread(Lane lane, Touch touch, Touch from) {
        return new Spread(
                lane.id(),
                lane.item(),
                lane.pieces(),
                touch.water(),
                touch.where(),
                touch.from(),
                from.where(),
                touch.from().isBefore(span.find().seen()));
    }
}
