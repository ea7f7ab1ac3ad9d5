package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.TravelFallback;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/** Nobody is in two places: every change of place is a drive that takes at least what the travel table or the estimate says. */
final class TravelTimeRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (CrewDay day : facts.week().crewDays()) {
            String place = facts.round().header().depot().id();
            for (Activity activity : day.activities()) {
                if (activity.kind() == ActivityKind.TRAVEL) {
                    int least = leastMin(facts, place, activity.place());
                    if (activity.minutes() < least) {
                        problems.add(PlanFacts.broken(
                                "travel",
                                day,
                                place + " to " + activity.place() + " in " + activity.minutes() + " min",
                                "at least " + least + " min"));
                    }
                } else if (!activity.place().equals(place)) {
                    problems.add(PlanFacts.broken(
                            "travel",
                            day,
                            activity.kind() + " at " + activity.place() + " right after being at " + place,
                            "a drive between"));
                }
                if (activity.site()
                        .filter(site -> !site.equals(activity.place()))
                        .isPresent()) {
                    problems.add(PlanFacts.broken(
                            "travel",
                            day,
                            "visit to " + activity.site().get() + " at " + activity.place(),
                            "at the site"));
                }
                place = activity.place();
            }
        }
        return problems;
    }

    private static int leastMin(PlanFacts facts, String from, String to) {
        int marginMin = facts.round().header().duty().arrivalMarginMin();
        if (from.equals(to)) {
            return 0;
        }
        return marginMin
                + facts.round().travel().stream()
                        .filter(leg -> leg.minutes() > 0)
                        .filter(leg -> (leg.from().equals(from) && leg.to().equals(to)))
                        .mapToInt(leg -> leg.minutes())
                        .findFirst()
                        .orElseGet(() -> facts.round().travel().stream()
                                .filter(leg -> leg.minutes() > 0
                                        && leg.from().equals(to)
                                        && leg.to().equals(from))
                                .mapToInt(leg -> leg.minutes())
                                .findFirst()
                                .orElseGet(() -> estimateMin(facts, from, to)));
    }

    private static int estimateMin(PlanFacts facts, String from, String to) {
        Optional<MetricPoint> start = facts.where(from);
        Optional<MetricPoint> end = facts.where(to);
        if (start.isEmpty() || end.isEmpty()) {
            return 0;
        }
        TravelFallback rule = facts.round().header().travelFallback();
        double east = start.get().eastM() - end.get().eastM();
        double north = start.get().northM() - end.get().northM();
        double km = Math.sqrt(east * east + north * north) / 1000 * rule.factor();
        return Math.max(1, (int) Math.floor(km / rule.speedKmH() * 60));
    }
}
