package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.week.CrewDay;

/** Each person rests between two crew-days, in whatever crew. */
final class RestRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        int restMin = facts.round().header().duty().minRestMin();
        for (Person person : facts.round().people()) {
            List<CrewDay> days = facts.week().crewDays().stream()
                    .filter(day -> day.people().contains(person.id()))
                    .sorted(Comparator.comparing(CrewDay::start))
                    .toList();
            for (int i = 1; i < days.size(); i++) {
                int rest = PlanFacts.minutes(days.get(i - 1).end(), days.get(i).start());
                if (rest < restMin) {
                    problems.add(PlanFacts.broken(
                            "rest",
                            days.get(i),
                            person.name() + " rests " + rest + " min after "
                                    + facts.clock(days.get(i - 1).end()),
                            "at least " + restMin));
                }
            }
        }
        return problems;
    }
}
