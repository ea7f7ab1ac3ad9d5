package org.wadeplan.planner.decon.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.LaneMoment;
import org.wadeplan.planner.decon.ledger.OpenExposures;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.decon.ledger.Treated;
import org.wadeplan.planner.decon.trace.TraceReport.ExposedKit;
import org.wadeplan.planner.decon.trace.TraceReport.Stay;
import org.wadeplan.planner.round.Round;

/** Everything that was or will be in the water of a find, where it is now, and what to do with it. */
final class ExposedKits {

    private final Round round;
    private final FindSpan span;
    private final OpenExposures exposures;
    private final TraceClock clock;

    ExposedKits(Round round, FindSpan span) {
        this.round = round;
        this.span = span;
        this.exposures = new OpenExposures(round);
        this.clock = new TraceClock(round.header().zone());
    }

    /**
     * Kit sets first, as in the ledger.
     *
     * @param again the same ledger with the cleanings that the find asks for
     */
    List<ExposedKit> of(ExposureLedger ledger, ExposureLedger again) {
        List<ExposedKit> exposed = new ArrayList<>();
        for (Lane lane : ledger.lanes()) {
            List<Touch> stays = stays(lane);
            if (!stays.isEmpty()) {
                exposed.add(exposed(lane, again.lane(lane.id()).orElse(lane), stays));
            }
        }
        return List.copyOf(exposed);
    }

    private List<Touch> stays(Lane lane) {
        return lane.touches().stream()
                .filter(touch -> touch.water().equals(span.find().water())
                        && span.reaches(touch.until(), round.header().zone()))
                .toList();
    }

    private ExposedKit exposed(Lane lane, Lane again, List<Touch> stays) {
        List<Stay> before = stays.stream()
                .filter(touch -> !touch.from().isAfter(span.find().seen()))
                .map(ExposedKits::stay)
                .toList();
        List<Stay> after = stays.stream()
                .filter(touch -> touch.from().isAfter(span.find().seen()))
                .map(ExposedKits::stay)
                .toList();
        return new ExposedKit(
                lane.id(),
                lane.label(),
                lane.item(),
                lane.pieces(),
                before,
                after,
                arrived(lane, stays.get(0)),
                now(lane, again, stays, before.isEmpty()));
    }

    private static Stay stay(Touch touch) {
        return new Stay(touch.where(), touch.from(), touch.until());
    }

    private String arrived(Lane lane, Touch first) {
        if (first.beforeTheRound()) {
            return "was there before the round";
        }
        LaneMoment moment = LaneMoment.of(round, lane, exposures, first.from().minusSeconds(1));
        List<String> earlier = lane.touchesBefore(first.from()).stream()
                .map(touch -> touch.water() + " (" + touch.where() + ")")
                .distinct()
                .toList();
        return moment.state().word() + " when it came to " + first.where() + " at " + clock.at(first.from())
                + ", so since "
                + clock.at(moment.since()) + " (" + moment.why() + "); before that "
                + (earlier.isEmpty() ? "it touched no water on file" : "it was at " + String.join(", ", earlier));
    }

    private String now(Lane lane, Lane again, List<Touch> stays, boolean notYet) {
        if (notYet) {
            return "not there yet; " + cleaning(again, stays.get(stays.size() - 1));
        }
        LaneMoment moment = LaneMoment.of(round, lane, exposures, span.find().seen());
        Touch last = stays.stream()
                .filter(touch -> !touch.from().isAfter(span.find().seen()))
                .reduce((first, second) -> second)
                .orElse(stays.get(0));
        if (Support.treated(round, lane, last, span.find().pest(), span.find().seen())) {
            return moment.state().word() + "; treated since then against "
                    + span.find().pest() + ", so nothing more is asked of it";
        }
        String which = lane.pieces() > 1
                ? "find out which of the " + lane.pieces() + " pieces were there, or take all of them as exposed"
                : moment.state().word() + " since " + clock.at(moment.since());
        return which + ": bag it, label it \"" + span.find().pest() + ", "
                + span.find().water() + "\", keep it from every other water; " + cleaning(again, last);
    }

    private String cleaning(Lane again, Touch last) {
        Optional<Treated> next = again.treated().stream()
                .filter(treated -> !treated.start().isBefore(last.until()))
                .findFirst();
        boolean does = next.flatMap(Treated::released)
                .filter(released ->
                        Support.treated(round, again, last, span.find().pest(), released))
                .isPresent();
        if (next.isEmpty() || !does) {
            String with = next.map(treated -> "its cleaning at " + clock.at(treated.start()) + " does not cover "
                            + span.find().pest()
                            + (treated.reasons().isEmpty() ? "" : " (" + String.join("; ", treated.reasons()) + ")"))
                    .orElse("no cleaning of it is planned");
            return with + ": clean it by a row for " + span.find().pest() + " before it goes anywhere else";
        }
        return "clean it at " + clock.at(next.get().start()) + " (" + next.get().by() + "): "
                + next.get().what()
                + next.get().released().map(at -> "; released " + clock.at(at)).orElse("");
    }
}
