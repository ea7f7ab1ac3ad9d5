package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;

/** Between two sites of one water the kit is checked and rinsed, unless it was cleaned in between. */
final class CheckRinseRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        int rinseMin = facts.round().biosecurity().steps().stream()
                .filter(step -> step.when().equals("same-water"))
                .mapToInt(DeconStepRule::minutes)
                .sum();
        for (KitSet set : facts.round().store().kitSets()) {
            Optional<Activity> before = Optional.empty();
            int rinsed = 0;
            for (Activity activity : touching(facts, set.id())) {
                if (activity.kind() == ActivityKind.VISIT) {
                    boolean moved = before.filter(one -> !one.place().equals(activity.place()))
                            .isPresent();
                    if (moved && rinsed < rinseMin) {
                        problems.add(PlanFacts.broken(
                                "rinse",
                                activity.place(),
                                set.id() + " comes from " + before.get().place() + " after " + rinsed
                                        + " min of rinsing",
                                rinseMin + " min of check and rinse, or a full cleaning"));
                    }
                    before = Optional.of(activity);
                    rinsed = 0;
                } else {
                    rinsed += activity.kind() == ActivityKind.RINSE ? activity.minutes() : 0;
                    before = activity.kind() == ActivityKind.DECON ? Optional.empty() : before;
                }
            }
        }
        return problems;
    }

    private static List<Activity> touching(PlanFacts facts, String set) {
        return facts.week().crewDays().stream()
                .flatMap(day -> day.activities().stream())
                .filter(activity -> activity.kitSets().contains(set))
                .sorted(Comparator.comparing(Activity::start))
                .toList();
    }
}
