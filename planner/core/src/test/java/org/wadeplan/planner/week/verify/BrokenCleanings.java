package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.week.DeconTask;

/** Cleanings that clean nothing, or too soon, or in a bath that is too small: each broken in one way. */
final class BrokenCleanings {

    private BrokenCleanings() {}

    /** No treatment left: brushing alone kills nothing (common practice). */
    static DeconTask brushedOnly(DeconTask task) {
        return withSteps(
                task,
                List.of(new DeconStep("brush", "brush", 20, true, Optional.empty(), Optional.empty())),
                List.of(new Turnaround.Cover(
                        "CSN", Material.HARD, "oxidiser-bath", EvidenceGrade.A, "invented agency sheet, demo only")));
    }

    static DeconTask withSteps(DeconTask task, List<DeconStep> steps, List<Turnaround.Cover> covers) {
        return new DeconTask(
                task.kitSet(),
                task.crew(),
                task.fromWaters(),
                task.start(),
                task.crewFree(),
                task.released(),
                steps,
                covers,
                task.reason());
    }

    /** The demo's treatments refuse this spray for the comb snail (grade X), whatever grade a plan writes beside it. */
    static DeconTask refusedSpray(DeconTask task) {
        return withSteps(
                task,
                task.steps(),
                List.of(new Turnaround.Cover(
                        "CSN", Material.HARD, "oxidiser-spray", EvidenceGrade.A, "claimed by hand")));
    }

    static DeconTask hasty(DeconTask task) {
        Instant soon = task.start().plusSeconds(60);
        return new DeconTask(
                task.kitSet(),
                task.crew(),
                task.fromWaters(),
                task.start(),
                soon,
                soon,
                task.steps(),
                task.covers(),
                "");
    }

    static DeconTask claimingNothing(DeconTask task) {
        return withSteps(task, task.steps(), List.of());
    }

    /** Off the rack as soon as it hangs there. */
    static DeconTask releasedWet(DeconTask task) {
        List<DeconStep> attended =
                task.steps().stream().filter(DeconStep::crewBusy).toList();
        return new DeconTask(
                task.kitSet(),
                task.crew(),
                task.fromWaters(),
                task.start(),
                task.crewFree(),
                task.crewFree(),
                attended,
                task.covers(),
                task.reason());
    }

    static List<DeconTask> twelvefold(List<DeconTask> tasks) {
        List<DeconTask> many = new ArrayList<>();
        for (DeconTask task : tasks) {
            many.addAll(Collections.nCopies(12, task));
        }
        return many;
    }
}
