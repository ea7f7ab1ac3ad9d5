package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Follows one kit set through the week: what it touched, what cleaned it, where it went next. */
final class KitTrail {

    private record Step(Instant at, Optional<Visit> visit, Optional<DeconTask> task) {}

    private final PlanFacts facts;
    private final KitSet set;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> dirtyFrom = new TreeSet<>();
    private Optional<DeconTask> lastTask = Optional.empty();
    private Instant lastUse = Instant.MIN;
    private boolean used;

    KitTrail(PlanFacts facts, KitSet set) {
        this.facts = facts;
        this.set = set;
        dirtyFrom.addAll(set.exposedTo());
    }

    List<Problem> follow() {
        List<Step> steps = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            if (visit.activity().kitSets().contains(set.id())) {
                steps.add(new Step(visit.activity().start(), Optional.of(visit), Optional.empty()));
            }
        }
        for (DeconTask task : facts.week().decon()) {
            if (task.kitSet().equals(set.id())) {
                steps.add(new Step(task.start(), Optional.empty(), Optional.of(task)));
            }
        }
        steps.sort(Comparator.comparing(Step::at));
        for (Step step : steps) {
            step.visit().ifPresent(this::use);
            step.task().ifPresent(this::clean);
        }
        if (used && !dirtyFrom.isEmpty()) {
            broken(set.id(), "left dirty from " + dirtyFrom + " at the end of the round", "cleaned after its last use");
        }
        return problems;
    }

    private void use(Visit visit) {
        String water = facts.water(visit).map(Water::id).orElse("?");
        Set<String> others = new TreeSet<>(dirtyFrom);
        others.remove(water);
        if (!others.isEmpty()) {
            broken(visit.name(), set.id() + " comes dirty from " + others + " into " + water, "cleaned first");
        }
        boolean unready =
                !used && lastTask.isEmpty() && set.exposedTo().isEmpty() && set.state() != StoreState.CLEAN_DRY;
        if (unready) {
            broken(visit.name(), set.id() + " starts the round as " + set.state(), "clean and dry");
        }
        lastTask.ifPresent(task -> afterCleaning(visit, water, task));
        dirtyFrom.add(water);
        lastUse = visit.activity().end();
        lastTask = Optional.empty();
        used = true;
    }

    private void afterCleaning(Visit visit, String water, DeconTask task) {
        if (visit.activity().start().isBefore(task.released())) {
            broken(
                    visit.name(),
                    set.id() + " is released only at " + facts.clock(task.released()),
                    "released before use");
        }
        for (String from : task.fromWaters()) {
            Optional<Turnaround> row = facts.plan().turnarounds().find(set.id(), from, water);
            if (!from.equals(water)
                    && row.filter(one -> one.possible() && covered(one, task)).isEmpty()) {
                broken(
                        visit.name(),
                        "the cleaning of " + set.id() + " after " + from + " does not release it to " + water,
                        "what the turnaround table asks");
            }
        }
    }

    private static boolean covered(Turnaround row, DeconTask task) {
        return row.covers().stream().allMatch(asked -> task.covers().stream()
                        .anyMatch(done -> done.pest().equals(asked.pest()) && done.material() == asked.material()))
                && PlanFacts.minutes(task.start(), task.released())
                        >= (row.covers().isEmpty() ? 1 : row.crewMin());
    }

    private void clean(DeconTask task) {
        if (task.start().isBefore(lastUse)) {
            broken(set.id(), "cleaned at " + facts.clock(task.start()) + " while in use", "after its last use");
        }
        if (!task.fromWaters().containsAll(dirtyFrom)) {
            broken(
                    set.id(),
                    "cleaned as from " + task.fromWaters() + " and dirty from " + dirtyFrom,
                    "for every water it touched");
        }
        dirtyFrom.clear();
        lastTask = Optional.of(task);
    }

    private void broken(String row, String found, String expected) {
        problems.add(PlanFacts.broken("kit-clean", row, found, expected));
    }
}
