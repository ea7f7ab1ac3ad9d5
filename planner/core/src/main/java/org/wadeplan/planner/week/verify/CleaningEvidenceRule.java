package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.week.DeconTask;

/**
 * What a cleaning claims to cover stands in the round's treatments, not refused there, and its steps do it for long enough.
 * A cleaning whose soak was struck out, or whose treatment was renamed, covers nothing.
 */
final class CleaningEvidenceRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Treatment> treatments = facts.round().biosecurity().treatments();
        List<Problem> problems = new ArrayList<>();
        for (DeconTask task : facts.week().decon()) {
            for (Turnaround.Cover cover : task.covers()) {
                lack(treatments, task, cover)
                        .ifPresent(expected -> problems.add(broken(
                                facts,
                                task,
                                "claims to cover " + cover.pest() + " on " + cover.material() + " by "
                                        + cover.treatment(),
                                expected)));
            }
        }
        return problems;
    }

    private static Optional<String> lack(List<Treatment> treatments, DeconTask task, Turnaround.Cover cover) {
        List<Treatment> rows = supporting(treatments, cover, cover.material());
        if (rows.isEmpty() && cover.material() == Material.FELT) {
            rows = supporting(treatments, cover, Material.ABSORBENT);
        }
        if (rows.isEmpty()) {
            return Optional.of("a row of treatments that supports it and none that refuses it");
        }
        return rows.stream().anyMatch(row -> done(task, row))
                ? Optional.empty()
                : Optional.of(
                        "steps that last as long as its row of treatments asks, picking first where it asks that");
    }

    /** A row of grade X refuses its treatment in its mode, whatever other rows say. */
    private static List<Treatment> supporting(List<Treatment> treatments, Turnaround.Cover cover, Material material) {
        List<Treatment> about = treatments.stream()
                .filter(row -> row.id().equals(cover.treatment())
                        && row.pest().equals(cover.pest())
                        && row.material() == material)
                .toList();
        return about.stream()
                .filter(row -> about.stream()
                        .noneMatch(other -> other.grade() == EvidenceGrade.X && other.mode() == row.mode()))
                .toList();
    }

    private static boolean done(DeconTask task, Treatment row) {
        return longest(task, List.of("soak", "spray", "freeze")) >= row.contactMin()
                && longest(task, List.of("dry")) >= row.dryingH() * 60
                && (!row.pickFirst()
                        || task.steps().stream().anyMatch(step -> step.step().equals("pick")));
    }

    private static int longest(DeconTask task, List<String> words) {
        return task.steps().stream()
                .filter(step -> words.contains(step.step()))
                .mapToInt(DeconStep::minutes)
                .max()
                .orElse(0);
    }

    private static Problem broken(PlanFacts facts, DeconTask task, String found, String expected) {
        return PlanFacts.broken(
                "cleaning-evidence",
                task.kitSet(),
                "the cleaning at " + facts.clock(task.start()) + " " + found,
                expected);
    }
}
