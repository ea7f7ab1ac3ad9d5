package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.Unplaced;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Every site of the list is visited or explained, by the method that was decided, on a day of the round. */
final class EverySiteRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        Set<String> visited = new TreeSet<>();
        for (Visit visit : facts.visits()) {
            String site = visit.activity().site().orElse("?");
            visited.add(site);
            Optional<String> decided =
                    facts.plan().decision(site).flatMap(one -> one.chosen()).map(MethodOutcome.Chosen::method);
            if (visit.site().isEmpty()
                    || decided.isEmpty()
                    || !decided.equals(visit.activity().method())) {
                problems.add(PlanFacts.broken(
                        "sites",
                        visit.name(),
                        "method " + visit.activity().method().orElse("none"),
                        "decided: " + decided.orElse("none")));
            }
            if (!facts.round().header().allDays().contains(visit.day().date())) {
                problems.add(PlanFacts.broken(
                        "sites", visit.name(), "on " + visit.day().date(), "a day of the round"));
            }
        }
        problems.addAll(unexplained(facts, visited));
        return problems;
    }

    private static List<Problem> unexplained(PlanFacts facts, Set<String> visited) {
        List<Problem> problems = new ArrayList<>();
        Set<String> explained = new TreeSet<>();
        facts.week().unplaced().stream()
                .filter(one -> !one.reasons().isEmpty())
                .map(Unplaced::site)
                .forEach(explained::add);
        for (Site site : facts.round().sites()) {
            if (site.reserveFor().isEmpty() && !visited.contains(site.id()) && !explained.contains(site.id())) {
                problems.add(PlanFacts.broken("sites", site.id(), "neither visited nor explained", "one of both"));
            }
            if (site.reserveFor().filter(visited::contains).isPresent() && visited.contains(site.id())) {
                problems.add(PlanFacts.broken(
                        "sites",
                        site.id(),
                        "visited though it only stands in for a site that is visited",
                        "one of both"));
            }
        }
        return problems;
    }
}
