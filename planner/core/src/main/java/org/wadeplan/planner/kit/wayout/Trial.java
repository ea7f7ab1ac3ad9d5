package org.wadeplan.planner.kit.wayout;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.ShortageSummary;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/**
 * A week laid out again with its loads and everything the rules of the week say against it.
 *
 * @param errors broken rules, by what makes two of them the same
 */
record Trial(WeekPlan week, KitPlan kit, Map<String, Problem> errors) {

    /** What is short of a kind in all; 0 where nothing is. */
    double shortBy(String kind) {
        return ShortageSummary.of(kit).stream()
                .filter(one -> one.kind().equals(kind))
                .mapToDouble(ShortageSummary::shortBy)
                .sum();
    }

    /** On how many crew-days or days a kind is short. */
    long shortDays(String kind) {
        return kit.shortages().stream().filter(one -> one.kind().equals(kind)).count();
    }

    Optional<CrewDay> day(String crew, LocalDate date) {
        return week.crewDay(crew, date);
    }

    /** Broken rules that were kept before, worst first. */
    List<Problem> newErrors(Trial before) {
        return errors.entrySet().stream()
                .filter(entry -> !before.errors().containsKey(entry.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }
}
