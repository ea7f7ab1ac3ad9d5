package org.wadeplan.planner.decon.schedule;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * The week's cleaning by the clock.
 *
 * @param tasks in the order in which they are served
 * @param bounds how the shared places were used, beside the least that it could take
 * @param gains what one more place would bring, and what beginning sooner would
 * @param later cleanings that end later on the bench than the week has them
 */
public record BenchPlan(List<BenchTask> tasks, List<BenchBound> bounds, List<BenchGain> gains, List<Later> later) {

    /** A cleaning that the bench releases later than the week says. */
    public record Later(BenchTask task, int minutesLater) {}

    public static BenchPlan of(Round round, WeekPlan week) {
        List<BenchRequest> requests = BenchRequests.of(round, week);
        List<DeconResource> resources = round.biosecurity().resources();
        List<BenchTask> tasks = BenchScheduler.schedule(requests, resources);
        return new BenchPlan(tasks, BenchBound.of(tasks), gains(requests, resources, tasks), later(tasks, week));
    }

    /** What concerns one kit set; the use of the places stays that of the whole week. */
    BenchPlan only(String kitSet) {
        return new BenchPlan(
                tasks.stream().filter(task -> task.kitSet().equals(kitSet)).toList(),
                bounds,
                gains.stream()
                        .filter(gain -> gain.task().kitSet().equals(kitSet))
                        .toList(),
                later.stream()
                        .filter(late -> late.task().kitSet().equals(kitSet))
                        .toList());
    }

    private static List<BenchGain> gains(
            List<BenchRequest> requests, List<DeconResource> resources, List<BenchTask> asPlanned) {
        List<BenchRequest> soonest =
                requests.stream().map(BenchRequest::asSoonAsThere).toList();
        List<BenchTask> begunSooner = BenchScheduler.schedule(soonest, resources);
        List<BenchGain> gains = new ArrayList<>();
        for (BenchTask task : asPlanned) {
            int byStarting = same(task, asPlanned, begunSooner).earlierThan(task);
            if (byStarting > 0) {
                gains.add(new BenchGain(task, Optional.empty(), byStarting, byStarting));
            }
        }
        for (DeconResource resource : resources) {
            List<BenchTask> roomier = BenchScheduler.schedule(soonest, oneMore(resources, resource));
            for (BenchTask task : asPlanned) {
                int withOne = same(task, asPlanned, roomier).earlierThan(task);
                int byStarting = same(task, asPlanned, begunSooner).earlierThan(task);
                if (withOne > 0 && withOne > byStarting) {
                    gains.add(new BenchGain(task, Optional.of(resource.label()), withOne, Math.max(0, byStarting)));
                }
            }
        }
        return List.copyOf(gains);
    }

    /** The cleaning that stands for the same one: the set's first is its first, and so on. */
    private static BenchTask same(BenchTask task, List<BenchTask> among, List<BenchTask> others) {
        List<BenchTask> ofSet = ofSet(task, others);
        return ofSet.get(ofSet(task, among).indexOf(task));
    }

    private static List<BenchTask> ofSet(BenchTask task, List<BenchTask> tasks) {
        return tasks.stream()
                .filter(other -> other.kitSet().equals(task.kitSet()))
                .toList();
    }

    private static List<DeconResource> oneMore(List<DeconResource> resources, DeconResource which) {
        return resources.stream()
                .map(one -> one.equals(which)
                        ? new DeconResource(
                                one.id(),
                                one.label(),
                                Math.max(1, one.capacityKitSets()) + 1,
                                one.agent(),
                                one.volumeL(),
                                one.strengthGL(),
                                one.note())
                        : one)
                .toList();
    }

    private static List<Later> later(List<BenchTask> tasks, WeekPlan week) {
        List<Later> later = new ArrayList<>();
        for (BenchTask task : tasks) {
            for (DeconTask planned : week.decon()) {
                boolean same = planned.kitSet().equals(task.kitSet())
                        && planned.start().equals(task.asked());
                if (same && task.released().isAfter(planned.released())) {
                    long minutes = Duration.between(planned.released(), task.released())
                            .toMinutes();
                    later.add(new Later(task, Math.toIntExact(minutes)));
                }
            }
        }
        return List.copyOf(later);
    }
}
