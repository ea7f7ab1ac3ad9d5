package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** The crew is large enough and has the operators, netters, first-aiders and a driver that the part asks for, on that date. */
final class CompetenceRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            if (visit.part().isEmpty()) {
                problems.add(PlanFacts.broken(
                        "competence",
                        visit.name(),
                        "the round does not know this part of this method",
                        "a part of methods"));
                continue;
            }
            MethodPart part = visit.part().get();
            List<Person> people = facts.people(visit.day());
            LocalDate date = visit.day().date();
            int byRule = facts.plan()
                    .decision(visit.activity().site().orElse(""))
                    .flatMap(one -> one.chosen())
                    .map(MethodOutcome.Chosen::crewMin)
                    .filter(java.util.OptionalInt::isPresent)
                    .map(java.util.OptionalInt::getAsInt)
                    .orElse(0);
            int operators = 0;
            int either = 0;
            int aiders = 0;
            boolean driver = false;
            for (Person person : people) {
                boolean operates = person.liveCircuit()
                        && person.roles().contains("operator")
                        && person.operatorUntil()
                                .filter(until -> !date.isAfter(until))
                                .isPresent();
                boolean nets = person.liveCircuit()
                        && (person.roles().contains("netter") || person.roles().contains("operator"));
                operators += operates ? 1 : 0;
                either += operates || nets ? 1 : 0;
                aiders += person.firstAidUntil()
                                .filter(until -> !date.isAfter(until))
                                .isPresent()
                        ? 1
                        : 0;
                driver |= person.driver();
            }
            boolean enough = people.size() >= Math.max(part.crewMin(), byRule)
                    && operators >= part.operatorsMin()
                    && either >= part.operatorsMin() + part.nettersMin()
                    && aiders >= part.firstAidersMin()
                    && driver;
            if (!enough) {
                problems.add(PlanFacts.broken(
                        "competence",
                        visit.name(),
                        people.size() + " people, " + operators + " operators, " + (either - operators)
                                + " more who net, " + aiders + " first-aiders, " + (driver ? "a driver" : "no driver"),
                        Math.max(part.crewMin(), byRule) + " people, " + part.operatorsMin() + " operators, "
                                + part.nettersMin() + " netters, " + part.firstAidersMin()
                                + " first-aiders, a driver"));
            }
        }
        return problems;
    }
}
