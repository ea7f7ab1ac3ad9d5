package org.wadeplan.planner.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.verify.WeekVerifier;

class WeekPlannerPropertyTest {

    /** Some sites of the demo round, longer or shorter visits, some crew-days gone: whatever comes out keeps every rule. */
    @Property(tries = 150, seed = "20270906")
    void everyPlanPassesTheIndependentCheck(
            @ForAll @Size(min = 1, max = 7) Set<@IntRange(min = 0, max = 13) Integer> sites,
            @ForAll @Size(max = 6) Set<@IntRange(min = 0, max = 13) Integer> daysOff,
            @ForAll @IntRange(min = 60, max = 130) int lengthPct) {
        Round demo = IlvermoorWeek.resolved();
        List<String> kept = sites.stream().map(i -> demo.sites().get(i).id()).toList();
        Set<String> off = new TreeSet<>();
        daysOff.forEach(
                i -> off.add(demo.roster().get(i).crew() + demo.roster().get(i).date()));
        Round round = RoundChange.of(demo)
                .keepSites(site -> kept.contains(site.id()))
                .keepRoster(day -> !off.contains(day.crew() + day.date()))
                .round();
        WeekInputs inputs = scaled(IlvermoorWeek.inputs(round), lengthPct);

        WeekPlan plan = WeekPlanner.plan(inputs, 3, Progress.NONE);

        List<String> errors = WeekVerifier.verify(round, Plans.of(inputs, plan)).stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .map(Problem::sentence)
                .toList();
        assertThat(errors).isEmpty();
    }

    private static WeekInputs scaled(WeekInputs inputs, int pct) {
        List<VisitEffort> efforts = inputs.efforts().stream()
                .map(effort -> new VisitEffort(
                        effort.site(),
                        effort.method(),
                        effort.parts().stream().map(part -> scaled(part, pct)).toList(),
                        effort.settings(),
                        effort.batteries(),
                        effort.shock()))
                .toList();
        return new WeekInputs(inputs.round(), inputs.decisions(), efforts, inputs.visitKits(), inputs.turnarounds());
    }

    private static PartEffort scaled(PartEffort part, int pct) {
        return new PartEffort(
                part.part(), part.p50Min() * pct / 100, part.p80Min() * pct / 100, part.pastVisits(), part.basis());
    }
}
