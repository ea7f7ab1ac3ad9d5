package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.LaneStates;
import org.wadeplan.planner.decon.ledger.StateSpan;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.decon.ledger.Treated;
import org.wadeplan.planner.round.Round;

/** The lanes of the kit sets from the ledger. */
final class SetLanes {

    private final Round round;
    private final Instant from;
    private final Instant to;
    private final ZoneId zone;

    /** Lanes between two moments. */
    SetLanes(Round round, Instant from, Instant to) {
        this.round = round;
        this.from = from;
        this.to = to;
        this.zone = round.header().zone();
    }

    List<SetLane> of(ExposureLedger ledger, Map<String, FindReport.Flag> flagged) {
        return ledger.kitSets().stream()
                .map(lane -> new SetLane(
                        lane.id(),
                        Words.of("purpose." + lane.kit().purpose().name()),
                        Optional.ofNullable(flagged.get(lane.id())),
                        spans(lane)))
                .toList();
    }

    private List<SetSpan> spans(Lane lane) {
        List<SetSpan> spans = new ArrayList<>();
        Instant at = from;
        for (StateSpan span : LaneStates.of(round, lane)) {
            Instant until = span.until().filter(end -> end.isBefore(to)).orElse(to);
            if (until.isAfter(at)) {
                spans.add(span(lane, span, at, until));
                at = until;
            }
        }
        return List.copyOf(spans);
    }

    private SetSpan span(Lane lane, StateSpan span, Instant begins, Instant ends) {
        SetState state = SetState.of(span.state());
        Optional<Touch> touch = lane.touches().stream()
                .filter(one -> state == SetState.IN_USE && one.from().equals(span.from()))
                .findFirst();
        String spoken = Words.of(
                "cleaning.spoken",
                lane.id(),
                state.words(),
                touch.map(one -> Words.of("cleaning.atSite", one.where())).orElse(""),
                Times.dayClock(begins, zone),
                Times.dayClock(ends, zone));
        String against = span.breach()
                .map(breach -> " " + Words.of("cleaning.breachSpoken", breach))
                .orElse("");
        return new SetSpan(
                lane.id(),
                state,
                begins,
                ends,
                touch.map(one -> List.of(one.water())).orElseGet(() -> touched(lane, begins)),
                touch.flatMap(Touch::site),
                span.why(),
                span.breach(),
                spoken + against);
    }

    /** Waters touched since it was last released. */
    private static List<String> touched(Lane lane, Instant at) {
        Instant released = lane.treated().stream()
                .filter(treated -> !treated.refused())
                .flatMap(treated -> treated.released().stream())
                .filter(time -> !time.isAfter(at))
                .max(Instant::compareTo)
                .orElse(Instant.MIN);
        return lane.touchesBefore(at.plusMillis(1)).stream()
                .filter(touch -> !touch.from().isBefore(released))
                .map(Touch::water)
                .distinct()
                .toList();
    }

    /** The cleaning that a span of treating, drying or released belongs to. */
    static Optional<Treated> treated(Lane lane, SetSpan span) {
        boolean cleaned = span.state() == SetState.TREATING
                || span.state() == SetState.DRYING
                || span.state() == SetState.RELEASED;
        return lane.treated().stream()
                .filter(treated -> cleaned && !treated.start().isAfter(span.from()))
                .reduce((first, second) -> second);
    }
}
