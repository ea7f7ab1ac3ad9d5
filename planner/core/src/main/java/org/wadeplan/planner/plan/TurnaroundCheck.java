package org.wadeplan.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * Holds a plan's turnaround table against the one that the round's own files give. The rules of the week read the plan's
 * table, so a row that was made easier by hand would otherwise let a dirty kit set through.
 */
final class TurnaroundCheck {

    private static final int SHOWN = 3;

    private TurnaroundCheck() {}

    static Optional<Problem> check(Round round, TurnaroundTable stated) {
        List<String> differing = new ArrayList<>();
        for (Turnaround due : TurnaroundPlanner.table(round).rows()) {
            Optional<Turnaround> found = stated.find(due.kitSet(), due.fromWater(), due.toWater());
            if (found.filter(row -> asksTheSame(row, due)).isEmpty()) {
                differing.add(due.kitSet() + " from " + due.fromWater() + " to " + due.toWater()
                        + (found.isPresent() ? "" : " (missing)"));
            }
        }
        return differing.isEmpty() ? Optional.empty() : Optional.of(problem(differing));
    }

    /**
     * Each cleaning of a week whose steps are those of no leg that the round's tables know for its kit set after those
     * waters: a step left out, cut short, moved to another place or done another way.
     */
    static List<Problem> cleanings(Round round, WeekPlan week) {
        TransferRules rules = new TransferRules(round);
        List<Problem> problems = new ArrayList<>();
        for (DeconTask task : week.decon()) {
            Optional<KitSet> set = round.store().kitSet(task.kitSet());
            boolean known = set.isPresent()
                    && !task.fromWaters().isEmpty()
                    && round.waters().stream()
                            .map(to -> rules.needed(set.get(), task.fromWaters(), to.id()))
                            .anyMatch(row -> row.steps().equals(task.steps()));
            if (!known) {
                problems.add(notAsked(task));
            }
        }
        return List.copyOf(problems);
    }

    private static Problem notAsked(DeconTask task) {
        return Problem.error(
                "cleaning-not-asked",
                SourcePlace.part("plan.json", task.kitSet() + " from " + String.join(", ", task.fromWaters())),
                "its steps are those of no leg that the round's tables know for this set after these waters",
                "every step with its minutes, place and target, as decon steps --table gives it",
                "plan the week again, or put the steps back");
    }

    /** The words of the reason may change between versions; what is to be done may not. */
    private static boolean asksTheSame(Turnaround stated, Turnaround due) {
        return stated.steps().equals(due.steps())
                && stated.crewMin() == due.crewMin()
                && stated.unattendedMin() == due.unattendedMin()
                && stated.covers().equals(due.covers())
                && stated.uncovered().equals(due.uncovered());
    }

    private static Problem problem(List<String> differing) {
        String shown = differing.stream().limit(SHOWN).collect(Collectors.joining("; "));
        String more = differing.size() > SHOWN ? "; and " + (differing.size() - SHOWN) + " more" : "";
        return Problem.error(
                "plan-turnarounds-differ",
                SourcePlace.part("plan.json", "turnarounds"),
                "what the plan asks between waters is not what the round's tables ask: " + shown + more,
                "the steps, minutes, covers and gaps that treatments, waters and kit sets give today",
                "plan the week again; until then trust no cleaning of this plan");
    }
}
