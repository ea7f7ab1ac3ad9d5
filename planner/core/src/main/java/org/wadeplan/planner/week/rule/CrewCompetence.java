package org.wadeplan.planner.week.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;

/** Whether the people of a crew on a date may do a part of a visit, by certificates that count on that date. */
public final class CrewCompetence {

    private CrewCompetence() {}

    /** What the crew lacks, each in a sentence with its numbers; empty where nothing is missing. */
    public static List<String> lacks(Round round, CrewDayRoster roster, MethodPart part, int crewMin) {
        LocalDate date = roster.date();
        List<Person> people = roster.people().stream()
                .map(round::person)
                .flatMap(Optional::stream)
                .toList();
        int operators =
                (int) people.stream().filter(one -> one.operatorOn(date)).count();
        int netters = (int) people.stream().filter(Person::netter).count();
        int firstAiders =
                (int) people.stream().filter(one -> one.firstAiderOn(date)).count();
        List<String> lacks = new ArrayList<>();
        String who = "crew " + roster.crew() + " on " + date + " has ";
        if (people.size() < crewMin) {
            lacks.add(who + people.size() + " people; needed: " + crewMin + ".");
        }
        if (operators < part.operatorsMin()) {
            lacks.add(who + operators + " operators whose certificate counts; needed: " + part.operatorsMin() + ".");
        } else if (allNetters(people, date, netters) < part.operatorsMin() + part.nettersMin()) {
            lacks.add(who + netters + " people who may operate or net; needed: " + part.operatorsMin()
                    + " to operate and " + part.nettersMin() + " to net.");
        }
        if (firstAiders < part.firstAidersMin()) {
            lacks.add(who + firstAiders + " first-aiders whose certificate counts; needed: " + part.firstAidersMin()
                    + ".");
        }
        if (people.stream().noneMatch(Person::driver)) {
            lacks.add(who + "nobody who drives.");
        }
        return lacks;
    }

    /** Everyone who may take a netter's or an operator's place; an operator without a netter's role may net too. */
    private static int allNetters(List<Person> people, LocalDate date, int netters) {
        int operatorsOnly = (int) people.stream()
                .filter(one -> one.operatorOn(date) && !one.netter())
                .count();
        return netters + operatorsOnly;
    }
}
