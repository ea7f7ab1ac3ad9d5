package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Round;

/** Every time that something goes into a water with something of another water on it, or before it is released. */
public final class LedgerBreaches {

    private final Round round;
    private final OpenExposures exposures;

    public LedgerBreaches(Round round) {
        this.round = round;
        this.exposures = new OpenExposures(round);
    }

    /**
     * Worst first: errors for kit sets; warnings, one for each, for items outside them, whose cleaning no plan schedules; notes
     * where one line of the store stands for several pieces, so that nobody can tell which was where.
     */
    public List<Problem> of(ExposureLedger ledger) {
        List<Problem> found = new ArrayList<>();
        for (Lane lane : ledger.lanes()) {
            List<String> carried = lane.touches().stream()
                    .filter(touch -> !touch.beforeTheRound())
                    .flatMap(touch -> use(lane, touch).stream())
                    .toList();
            if (lane.item() && !carried.isEmpty()) {
                String more = carried.size() > 1 ? "; and " + (carried.size() - 1) + " more times" : "";
                found.add(problem(lane, "item-carries", carried.get(0) + more));
            } else {
                carried.forEach(one -> found.add(problem(lane, "kit-carries", one)));
            }
            if (!lane.item()) {
                found.addAll(states(lane));
            }
        }
        return found.stream().sorted(Problem.WORST_FIRST).toList();
    }

    private List<Problem> states(Lane lane) {
        List<Problem> found = new ArrayList<>();
        for (StateSpan span : LaneStates.of(round, lane)) {
            span.breach()
                    .ifPresent(breach -> found.add(Problem.error(
                            "kit-state",
                            SourcePlace.part("kit_sets.csv", lane.id()),
                            clock(span.from()) + ": " + breach + " (" + span.why() + ")",
                            "states in their order: used only when clean or released, treated when out of the water",
                            "wait until it is released, or take another kit set")));
        }
        return found;
    }

    private Optional<String> use(Lane lane, Touch touch) {
        Set<String> carried = new LinkedHashSet<>();
        for (OpenExposure open : exposures.on(lane, touch.from(), touch.water())) {
            carried.add(open.pest() + " from " + open.water() + " (" + open.where() + ")");
        }
        String some = lane.pieces() > 1 ? "some of its " + lane.pieces() + " pieces" : lane.id();
        return carried.isEmpty()
                ? Optional.empty()
                : Optional.of(some + " may bring into " + touch.water() + " at " + clock(touch.from()) + " ("
                        + touch.where() + "): " + String.join(", ", carried));
    }

    private static Problem problem(Lane lane, String code, String what) {
        boolean several = lane.pieces() > 1;
        Severity severity = several ? Severity.NOTE : lane.item() ? Severity.WARNING : Severity.ERROR;
        return new Problem(
                severity,
                code,
                SourcePlace.part(lane.item() ? "store.csv" : "kit_sets.csv", lane.id()),
                what,
                "a treatment in between that the evidence supports against each, and dry",
                several
                        ? "give the pieces numbers of their own, so that each is kept to one water or cleaned in between"
                        : "clean it in between, keep it to one water, or take another one");
    }

    private String clock(Instant time) {
        return time.atZone(round.header().zone()).toLocalDateTime().toString().replace('T', ' ');
    }
}
