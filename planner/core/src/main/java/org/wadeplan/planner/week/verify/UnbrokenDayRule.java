package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/** A crew-day starts and ends at the depot, and its activities follow each other without gap or overlap. */
final class UnbrokenDayRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        String depot = facts.round().header().depot().id();
        for (CrewDay day : facts.week().crewDays()) {
            List<Activity> all = day.activities();
            if (all.isEmpty()) {
                problems.add(PlanFacts.broken("day", day, "nothing to do", "at least one activity"));
                continue;
            }
            if (all.get(0).kind() != ActivityKind.LOAD
                    || !all.get(all.size() - 1).place().equals(depot)) {
                problems.add(PlanFacts.broken(
                        "day", day, "does not load first or ends away from the depot", "load, ..., depot"));
            }
            for (int i = 0; i < all.size(); i++) {
                if (!all.get(i).end().isAfter(all.get(i).start())) {
                    problems.add(PlanFacts.broken(
                            "day", day, all.get(i).kind() + " ends before it starts", "an end after its start"));
                }
                if (i > 0 && !all.get(i).start().equals(all.get(i - 1).end())) {
                    problems.add(PlanFacts.broken(
                            "day",
                            day,
                            all.get(i).kind() + " starts at "
                                    + facts.clock(all.get(i).start()) + ", the one before ends at "
                                    + facts.clock(all.get(i - 1).end()),
                            "no gap and no overlap"));
                }
            }
        }
        return problems;
    }
}
