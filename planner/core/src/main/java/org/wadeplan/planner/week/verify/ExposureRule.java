package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/**
 * No kit set enters a water while a pest of another water may be on it: for each water that it ever touched, before the round
 * too, each pest that counts there and each material of the set, some cleaning since, over and dry by then, does what a row
 * of the treatments asks. It follows pests, not what a plan says of itself, so it sees swapped sets and lost exposures.
 */
final class ExposureRule implements WeekRule {

    private record Touch(String water, Instant end) {}

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (KitSet set : facts.round().store().kitSets()) {
            List<Touch> touches = new ArrayList<>();
            set.exposedTo().forEach(water -> touches.add(new Touch(water, Instant.MIN)));
            for (Visit visit : visits(facts, set)) {
                String water = facts.water(visit).map(Water::id).orElse("?");
                Set<String> carried = new LinkedHashSet<>();
                touches.forEach(touch -> carried.addAll(carried(facts, set, touch, visit, water)));
                if (!carried.isEmpty()) {
                    problems.add(PlanFacts.broken(
                            "exposure",
                            visit.name(),
                            set.id() + " may bring into " + water + ": " + String.join(", ", carried),
                            "a cleaning since, over and dry by then, that a row of treatments supports against each"));
                }
                touches.add(new Touch(water, visit.activity().end()));
            }
        }
        return problems;
    }

    private static List<Visit> visits(PlanFacts facts, KitSet set) {
        return facts.visits().stream()
                .filter(visit -> visit.activity().kitSets().contains(set.id()))
                .sorted(Comparator.comparing(visit -> visit.activity().start()))
                .toList();
    }

    /** What a touch may have left on the set when it goes into another water; empty where it is the same water. */
    private static Set<String> carried(PlanFacts facts, KitSet set, Touch touch, Visit visit, String water) {
        Set<String> carried = new LinkedHashSet<>();
        if (touch.water().equals(water)) {
            return carried;
        }
        List<DeconTask> between = facts.week().decon().stream()
                .filter(task -> task.kitSet().equals(set.id())
                        && !task.start().isBefore(touch.end())
                        && !task.released().isAfter(visit.activity().start()))
                .toList();
        SortedSet<String> pests = new PestStatusFacts(facts.round()).counted(touch.water(), water);
        boolean knownWater = facts.round().water(touch.water()).isPresent();
        if (pests.isEmpty() || !knownWater) {
            if (!knownWater || between.isEmpty()) {
                carried.add("anything from " + touch.water());
            }
            return carried;
        }
        for (String pest : pests) {
            for (Material material : new TreeSet<>(set.materials())) {
                if (!covers(facts.round(), between, pest, material)) {
                    carried.add(pest + " from " + touch.water() + " on "
                            + material.name().toLowerCase(Locale.ROOT) + " items");
                }
            }
        }
        return carried;
    }

    /** In every life stage that the list of pests or the table tells apart; a cover that names no stage is about the pest as a whole. */
    private static boolean covers(Round round, List<DeconTask> tasks, String pest, Material material) {
        Set<String> stages = new TreeSet<>();
        round.biosecurity().pests().stream()
                .filter(one -> one.id().equals(pest))
                .forEach(one -> stages.addAll(one.stages()));
        round.biosecurity().treatments().stream()
                .filter(row -> row.pest().equals(pest))
                .forEach(row -> row.stage().ifPresent(stages::add));
        return stages.isEmpty()
                ? tasks.stream().anyMatch(task -> covers(round, task, pest, material, ""))
                : stages.stream()
                        .allMatch(stage -> tasks.stream().anyMatch(task -> covers(round, task, pest, material, stage)));
    }

    private static boolean covers(Round round, DeconTask task, String pest, Material material, String stage) {
        CleaningSteps steps = new CleaningSteps(round);
        return task.covers().stream()
                .filter(cover -> cover.pest().equals(pest) && cover.material() == material)
                .filter(cover -> cover.stage().map(stage::equals).orElse(true))
                .anyMatch(cover -> steps.lack(task, cover).isEmpty());
    }
}
