package org.wadeplan.planner.decon.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.PestsAtWater;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Finds cleanings after which a set goes back into the one water that it comes from, where no pest is known. */
final class OptionalCleans {

    private OptionalCleans() {}

    static List<OptionalClean> of(Round round, WeekPlan week) {
        List<OptionalClean> optional = new ArrayList<>();
        for (DeconTask task : week.decon()) {
            next(week, task).flatMap(visit -> same(round, task, visit)).ifPresent(optional::add);
        }
        return List.copyOf(optional);
    }

    private static Optional<Activity> next(WeekPlan week, DeconTask task) {
        return week.crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .filter(visit -> visit.kitSets().contains(task.kitSet())
                        && !visit.start().isBefore(task.start()))
                .min(Comparator.comparing(Activity::start));
    }

    private static Optional<OptionalClean> same(Round round, DeconTask task, Activity visit) {
        Optional<String> water =
                visit.site().flatMap(round::site).flatMap(round::waterOf).map(Water::id);
        boolean back = water.isPresent() && task.fromWaters().equals(List.of(water.get()));
        if (!back || !pestFree(round, water.get())) {
            return Optional.empty();
        }
        return Optional.of(
                new OptionalClean(task, water.get(), visit.start(), visit.site().orElse("")));
    }

    /** True where none of the pests was found there; what nobody can look for stays unknown everywhere. */
    private static boolean pestFree(Round round, String water) {
        return PestsAtWater.of(round.biosecurity(), round.header().firstDay(), List.of(water))
                .known()
                .isEmpty();
    }
}
