package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.LowWater;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Work in tidal water is done around low water. */
final class TideRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        var rules = facts.round().header().tide();
        for (Visit visit : facts.visits()) {
            Optional<Water> water = facts.water(visit).filter(Water::tidal);
            boolean wet = visit.part().filter(part -> part.inWaterMin() > 0).isPresent();
            if (water.isPresent() && wet) {
                boolean held = facts.round().tides().stream()
                        .filter(low -> water.get()
                                .tidePlace()
                                .filter(low.place()::equals)
                                .isPresent())
                        .map(LowWater::at)
                        .anyMatch(low -> !visit.wetStart().isBefore(low.minusSeconds(60L * rules.beforeLowMin()))
                                && !visit.wetEnd().isAfter(low.plusSeconds(60L * rules.afterLowMin())));
                if (!held) {
                    problems.add(PlanFacts.broken(
                            "tide",
                            visit.name(),
                            facts.clock(visit.wetStart()) + " to " + facts.clock(visit.wetEnd()) + " in the water",
                            "from " + rules.beforeLowMin() + " min before low water to " + rules.afterLowMin()
                                    + " min after"));
                }
            }
        }
        return problems;
    }
}
