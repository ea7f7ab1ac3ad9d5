package org.wadeplan.planner.decon.trace;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.DeconTask;

/** Works out again every cleaning that has not begun when the pest is seen. */
final class CleaningRecheck {

    private final Round after;
    private final TransferRules rules;
    private final ExposureLedger ledger;
    private final FindSpan span;

    /** @param after the round with the pest known */
    CleaningRecheck(Round after, ExposureLedger ledger, FindSpan span) {
        this.after = after;
        this.rules = new TransferRules(after);
        this.ledger = ledger;
        this.span = span;
    }

    /** The cleanings that change, by start. One that began before the find is over or under way and stays as it is. */
    List<ChangedCleaning> of(List<DeconTask> tasks) {
        List<ChangedCleaning> changed = new ArrayList<>();
        for (DeconTask task : tasks) {
            if (!task.start().isBefore(span.find().seen())) {
                ledger.lane(task.kitSet())
                        .flatMap(lane -> changed(lane, task))
                        .ifPresent(again -> changed.add(new ChangedCleaning(task, again)));
            }
        }
        changed.sort(Comparator.comparing(one -> one.before().start()));
        return List.copyOf(changed);
    }

    private Optional<DeconTask> changed(Lane lane, DeconTask task) {
        TreeSet<String> from = new TreeSet<>(task.fromWaters());
        if (stillOpen(lane, task.start())) {
            from.add(span.find().water());
        }
        if (!from.contains(span.find().water())) {
            return Optional.empty();
        }
        Turnaround needed = rules.needed(lane.kit(), from, nextWater(lane, from, task.start()));
        boolean does = needed.possible() && needed.covers().stream().allMatch(asked -> covers(task, asked));
        return does ? Optional.empty() : Optional.of(again(task, List.copyOf(from), needed));
    }

    /** Whether it was in the water since its last clear visit and no cleaning since covers the pest. */
    private boolean stillOpen(Lane lane, Instant at) {
        return lane.touchesBefore(at).stream()
                .filter(touch -> touch.water().equals(span.find().water()))
                .filter(touch -> span.reaches(touch.until(), after.header().zone()))
                .anyMatch(touch ->
                        !Support.treated(after, lane, touch, span.find().pest(), at));
    }

    private static boolean covers(DeconTask task, Turnaround.Cover asked) {
        return task.covers().stream()
                .anyMatch(done -> done.pest().equals(asked.pest())
                        && done.material() == asked.material()
                        && (done.stage().isEmpty() || done.stage().equals(asked.stage()))
                        && done.grade().compareTo(asked.grade()) <= 0);
    }

    private String nextWater(Lane lane, NavigableSet<String> from, Instant at) {
        return lane.touches().stream()
                .filter(touch -> !touch.from().isBefore(at))
                .map(Touch::water)
                .findFirst()
                .filter(water -> !(from.size() == 1 && from.contains(water)))
                .or(() -> after.waters().stream()
                        .filter(water -> !from.contains(water.id()))
                        .min(Comparator.comparing(Water::protectedWater))
                        .map(Water::id))
                .orElse(from.first());
    }

    private static DeconTask again(DeconTask task, List<String> from, Turnaround needed) {
        return new DeconTask(
                task.kitSet(),
                task.crew(),
                from,
                task.start(),
                task.start()
                        .plus(minutes(needed.steps().stream()
                                .filter(DeconStep::crewBusy)
                                .toList())),
                task.start().plus(minutes(needed.steps())),
                needed.steps(),
                needed.covers(),
                needed.reason());
    }

    static Duration minutes(List<DeconStep> steps) {
        return Duration.ofMinutes(steps.stream().mapToInt(DeconStep::minutes).sum());
    }
}
