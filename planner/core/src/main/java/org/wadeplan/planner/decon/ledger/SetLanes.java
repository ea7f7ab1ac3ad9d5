package org.wadeplan.planner.decon.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Follows a kit set through a week. */
final class SetLanes {

    private final Round round;
    private final WeekPlan week;
    private final List<Touches.Visit> visits;

    SetLanes(Round round, WeekPlan week) {
        this.round = round;
        this.week = week;
        this.visits = Touches.visits(round, week);
    }

    Lane of(KitSet set) {
        List<Touch> own = visits.stream()
                .filter(visit -> visit.activity().kitSets().contains(set.id()))
                .map(Touches.Visit::touch)
                .toList();
        List<Touch> touches = new ArrayList<>(Touches.before(round, set.exposedTo(), set.wetSince()));
        touches.addAll(set.purpose() == KitPurpose.TRAPS ? Touches.withSoaks(visits, own) : own);
        List<Treated> planned = week.decon().stream()
                .filter(task -> task.kitSet().equals(set.id()))
                .map(SetLanes::planned)
                .sorted(Comparator.comparing(Treated::start))
                .toList();
        return new Lane(set, set.note().orElse(""), false, 1, List.copyOf(touches), planned);
    }

    private static Treated planned(DeconTask task) {
        return new Treated(
                words(task.steps()),
                "crew " + task.crew(),
                task.start(),
                task.crewFree(),
                Optional.of(task.released()),
                task.covers().stream()
                        .map(cover -> new Treated.Credit(cover, task.released()))
                        .toList(),
                task.steps(),
                false,
                List.of());
    }

    /** {@code brush 20, soak 40 (60 °C), rinse 30}: minutes for which somebody is busy. */
    static String words(List<DeconStep> steps) {
        return steps.stream()
                .filter(DeconStep::crewBusy)
                .map(step -> step.step() + " " + step.minutes()
                        + step.target().map(target -> " (" + target + ")").orElse(""))
                .collect(Collectors.joining(", "));
    }
}
