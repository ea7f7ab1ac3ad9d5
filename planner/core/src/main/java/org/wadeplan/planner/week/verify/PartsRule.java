package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** All parts of a visit are in the plan once, in order, with gaps within bounds; parts that belong together stay with one crew-day. */
final class PartsRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        Map<String, List<Visit>> bySite = new TreeMap<>();
        facts.visits()
                .forEach(visit -> bySite.computeIfAbsent(visit.activity().site().orElse("?"), key -> new ArrayList<>())
                        .add(visit));
        bySite.forEach((site, visits) -> check(facts, site, visits, problems));
        return problems;
    }

    private static void check(PlanFacts facts, String site, List<Visit> unsorted, List<Problem> problems) {
        List<Visit> visits = unsorted.stream()
                .sorted(Comparator.comparing((Visit visit) -> visit.activity().start()))
                .toList();
        List<VisitPart> asked =
                visits
                        .get(0)
                        .activity()
                        .method()
                        .flatMap(facts.round()::method)
                        .map(Method::parts)
                        .orElse(List.of())
                        .stream()
                        .map(MethodPart::part)
                        .toList();
        List<VisitPart> found = visits.stream()
                .map(visit -> visit.activity().part())
                .flatMap(Optional::stream)
                .toList();
        if (!asked.equals(found)) {
            problems.add(PlanFacts.broken("parts", site, "parts in this order: " + found, asked.toString()));
            return;
        }
        checkGaps(site, visits, found, problems);
    }

    private static void checkGaps(String site, List<Visit> visits, List<VisitPart> found, List<Problem> problems) {
        for (int i = 1; i < visits.size(); i++) {
            int gap = PlanFacts.minutes(
                    visits.get(i - 1).activity().start(),
                    visits.get(i).activity().start());
            MethodPart part = visits.get(i).part().orElseThrow();
            if (gap < part.gapMinMin().orElse(0) || gap > part.gapMaxMin().orElse(Integer.MAX_VALUE)) {
                problems.add(PlanFacts.broken(
                        "parts",
                        site,
                        gap + " min between the starts of " + found.get(i - 1) + " and " + found.get(i),
                        part.gapMinMin().orElse(0) + " to " + part.gapMaxMin().orElse(Integer.MAX_VALUE) + " min"));
            }
            boolean together = part.part() != VisitPart.LIFT && part.gapMinMin().orElse(0) < 360;
            if (together && !visits.get(i).day().equals(visits.get(i - 1).day())) {
                problems.add(PlanFacts.broken(
                        "parts",
                        site,
                        found.get(i) + " is with another crew-day",
                        "the crew-day of " + found.get(i - 1)));
            }
        }
    }
}
