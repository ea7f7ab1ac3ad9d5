package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreState;

/** Turns the touches and treatments of a lane into states, one after the other. */
public final class LaneStates {

    private record Change(Instant at, KitState state, String why) {}

    /** What happens to it from one moment on, in order. */
    private record Happening(Instant start, List<Change> changes) {}

    private LaneStates() {}

    /** By time, from the beginning of the round; the last one has no end. */
    public static List<StateSpan> of(Round round, Lane lane) {
        List<Happening> happenings = new ArrayList<>();
        lane.touches().stream()
                .filter(touch -> !touch.beforeTheRound())
                .map(LaneStates::use)
                .forEach(happenings::add);
        lane.treated().stream().map(LaneStates::treatment).forEach(happenings::add);
        happenings.sort(Comparator.comparing(Happening::start));
        List<Change> changes = new ArrayList<>(List.of(start(round, lane)));
        for (int i = 0; i < happenings.size(); i++) {
            Optional<Instant> next = i + 1 < happenings.size()
                    ? Optional.of(happenings.get(i + 1).start())
                    : Optional.empty();
            happenings.get(i).changes().stream()
                    .filter(change ->
                            next.filter(limit -> change.at().isAfter(limit)).isEmpty())
                    .forEach(changes::add);
        }
        return spans(changes);
    }

    private static Change start(Round round, Lane lane) {
        Instant begins =
                round.header().firstDay().atStartOfDay(round.header().zone()).toInstant();
        boolean exposed = lane.touches().stream().anyMatch(Touch::beforeTheRound);
        KitState state =
                switch (lane.kit().state()) {
                    case OUT_OF_SERVICE -> KitState.OUT_OF_SERVICE;
                    case CLEAN_DRY -> exposed ? KitState.DIRTY : KitState.CLEAN_DRY;
                    case DRYING -> exposed ? KitState.DIRTY : KitState.DRYING;
                    case WET, DIRTY -> KitState.DIRTY;
                };
        String why = exposed
                ? "touched before the round: " + String.join(", ", lane.kit().exposedTo())
                : "as the store has it" + (lane.kit().state() == StoreState.DRYING ? ", from what is not on file" : "");
        return new Change(begins, state, why);
    }

    private static Happening use(Touch touch) {
        String why = touch.where() + touch.crew().map(crew -> ", crew " + crew).orElse("");
        return new Happening(
                touch.from(),
                List.of(
                        new Change(touch.from(), KitState.IN_USE, why),
                        new Change(touch.until(), KitState.DIRTY, "from " + touch.water())));
    }

    private static Happening treatment(Treated treated) {
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(
                treated.start(),
                KitState.TREATING,
                (treated.onRecord() ? "on record: " : "") + treated.what() + ", " + treated.by()));
        if (treated.credits().isEmpty()) {
            String why = treated.reasons().isEmpty()
                    ? "the cleaning covers nothing"
                    : "the cleaning counts for nothing: " + String.join("; ", treated.reasons());
            changes.add(new Change(treated.crewFree(), KitState.DIRTY, why));
        } else {
            if (treated.released().filter(treated.crewFree()::equals).isEmpty()) {
                changes.add(new Change(treated.crewFree(), KitState.DRYING, "hung up to dry"));
            }
            treated.released().ifPresent(at -> changes.add(new Change(at, KitState.RELEASED, "treated and dry")));
        }
        return new Happening(treated.start(), changes);
    }

    private static List<StateSpan> spans(List<Change> changes) {
        List<StateSpan> spans = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            Change change = changes.get(i);
            Optional<Instant> until =
                    i + 1 < changes.size() ? Optional.of(changes.get(i + 1).at()) : Optional.empty();
            Optional<String> breach = i > 0 && !changes.get(i - 1).state().mayBecome(change.state())
                    ? Optional.of(change.state().word() + " while "
                            + changes.get(i - 1).state().word())
                    : Optional.empty();
            boolean momentary = until.filter(change.at()::equals).isPresent();
            if (!momentary || breach.isPresent()) {
                spans.add(new StateSpan(change.state(), change.at(), until, change.why(), breach));
            }
        }
        return List.copyOf(spans);
    }
}
