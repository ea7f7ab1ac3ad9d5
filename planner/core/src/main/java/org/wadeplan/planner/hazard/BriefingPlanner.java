package org.wadeplan.planner.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.hazards.assess.Assessment;
import org.wadeplan.hazards.assess.Assessor;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.hazards.briefing.BriefingWriter;
import org.wadeplan.hazards.briefing.CrewRoles;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** Step 8: a briefing for every part of every visit as placed. */
public final class BriefingPlanner {

    private BriefingPlanner() {}

    /** In the order of the week. No briefing is reviewed yet: each says so until a competent person has signed it. */
    public static List<VisitBriefing> plan(Round round, List<Reach> reaches, WeekPlan week) {
        List<VisitBriefing> briefings = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            for (Activity visit : day.visits()) {
                planned(round, day, visit).ifPresent(part -> briefings.add(briefing(part, reaches)));
            }
        }
        return List.copyOf(briefings);
    }

    private static Optional<PlannedPart> planned(Round round, CrewDay day, Activity visit) {
        return visit.site().flatMap(round::site).flatMap(site -> visit.method()
                .flatMap(round::method)
                .map(method -> new PlannedPart(round, day, visit, site, method)));
    }

    private static VisitBriefing briefing(PlannedPart part, List<Reach> reaches) {
        Assessment assessment =
                Assessor.assess(VisitExposure.of(part), part.round().hazardRegister());
        Optional<Reach> reach = reaches.stream()
                .filter(laid -> laid.site().equals(part.site().id()))
                .findFirst();
        Briefing briefing =
                BriefingWriter.write(assessment, VisitEmergency.of(part, reach), roles(part), Optional.empty());
        return new VisitBriefing(
                part.site().id(),
                part.day().date(),
                part.day().crew(),
                part.visit().part().orElseThrow(),
                briefing);
    }

    /** Names by the roles that controls are owned by; a role that nobody holds stays without a name, and the sheet says so. */
    private static CrewRoles roles(PlannedPart part) {
        Map<String, String> names = new TreeMap<>();
        List<Person> people = part.day().people().stream()
                .flatMap(id -> part.round().person(id).stream())
                .toList();
        for (Person person : people) {
            if (person.roles().contains("lead")) {
                names.putIfAbsent("leader", person.name());
            }
            if (person.operatorOn(part.day().date())) {
                names.putIfAbsent("operator", person.name());
            }
            if (person.driver()) {
                names.putIfAbsent("driver", person.name());
            }
            if (person.firstAiderOn(part.day().date())) {
                names.putIfAbsent("first aider", person.name());
            }
            if (person.roles().contains("bucket")) {
                names.putIfAbsent("bank watcher", person.name());
            }
        }
        part.round().people().stream()
                .filter(person -> person.roles().contains("check-in"))
                .findFirst()
                .ifPresent(person -> names.put("office", person.name()));
        return CrewRoles.of(names);
    }
}
