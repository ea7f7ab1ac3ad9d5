package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** The crew is large enough and has the operators, netters, first-aiders and a driver that the part asks for, on that date. */
final class CompetenceRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            if (visit.part().isPresent()) {
                check(facts, visit, visit.part().get(), problems);
            } else {
                problems.add(PlanFacts.broken(
                        "competence",
                        visit.name(),
                        "the round does not know this part of this method",
                        "a part of methods"));
            }
        }
        return problems;
    }

    private static void check(PlanFacts facts, Visit visit, MethodPart part, List<Problem> problems) {
        List<Person> people = facts.people(visit.day());
        LocalDate date = visit.day().date();
        int crewMin = Math.max(part.crewMin(), crewByRule(facts, visit));
        int operators = 0;
        int either = 0;
        int aiders = 0;
        boolean driver = false;
        for (Person person : people) {
            operators += operates(person, date) ? 1 : 0;
            either += operates(person, date) || nets(person) ? 1 : 0;
            aiders += aids(person, date) ? 1 : 0;
            driver |= person.driver();
        }
        boolean enough = people.size() >= crewMin
                && operators >= part.operatorsMin()
                && either >= part.operatorsMin() + part.nettersMin()
                && aiders >= part.firstAidersMin()
                && driver;
        if (!enough) {
            String found = people.size() + " people, " + operators + " operators, " + (either - operators)
                    + " more who net, " + aiders + " first-aiders, " + (driver ? "a driver" : "no driver");
            String asked = crewMin + " people, " + part.operatorsMin() + " operators, " + part.nettersMin()
                    + " netters, " + part.firstAidersMin() + " first-aiders, a driver";
            problems.add(PlanFacts.broken("competence", visit.name(), found, asked));
        }
    }

    private static int crewByRule(PlanFacts facts, Visit visit) {
        return facts.plan()
                .decision(visit.activity().site().orElse(""))
                .flatMap(decision -> decision.chosen())
                .map(chosen -> chosen.crewMin())
                .orElse(OptionalInt.empty())
                .orElse(0);
    }

    private static boolean operates(Person person, LocalDate date) {
        return person.liveCircuit()
                && person.roles().contains("operator")
                && person.operatorUntil().filter(until -> !date.isAfter(until)).isPresent();
    }

    private static boolean nets(Person person) {
        return person.liveCircuit()
                && (person.roles().contains("netter") || person.roles().contains("operator"));
    }

    private static boolean aids(Person person, LocalDate date) {
        return person.firstAidUntil().filter(until -> !date.isAfter(until)).isPresent();
    }
}
