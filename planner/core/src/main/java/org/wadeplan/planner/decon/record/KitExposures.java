package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.WeekPlan;

/** Every water that each kit set was in, before the round and by the week. Exposure belongs to the kit, not to the crew. */
public final class KitExposures {

    /** Stands for a water that no row of the round's waters holds: it never counts as known. */
    static final String UNKNOWN_WATER = "?";

    private KitExposures() {}

    /** By start, then kit set. */
    public static List<KitExposure> of(Round round, WeekPlan week) {
        List<KitExposure> exposures = new ArrayList<>();
        // When it was there is not on file, so no cleaning from before the round counts.
        Instant begins =
                round.header().firstDay().atStartOfDay(round.header().zone()).toInstant();
        for (KitSet set : round.store().kitSets()) {
            for (String water : set.exposedTo()) {
                exposures.add(new KitExposure(
                        set.id(),
                        water,
                        "before the round",
                        Instant.EPOCH,
                        set.wetSince().orElse(begins)));
            }
        }
        List<Activity> visits =
                week.crewDays().stream().flatMap(day -> day.visits().stream()).toList();
        visits.forEach(visit -> add(exposures, round, visits, visit));
        exposures.sort(Comparator.comparing(KitExposure::from)
                .thenComparing(KitExposure::kitSet)
                .thenComparing(KitExposure::water));
        return List.copyOf(exposures);
    }

    private static void add(List<KitExposure> exposures, Round round, List<Activity> visits, Activity visit) {
        Optional<Water> water = visit.site().flatMap(round::site).flatMap(round::waterOf);
        String name = water.map(Water::id).orElse(UNKNOWN_WATER);
        visit.kitSets()
                .forEach(set -> exposures.add(new KitExposure(
                        set, name, visit.site().orElse(""), visit.start(), until(round, visits, visit, set))));
    }

    /** Traps lie in the water until they are lifted; where nobody lifts them, to the end of the round's days. */
    private static Instant until(Round round, List<Activity> visits, Activity visit, String set) {
        boolean laid = visit.part().filter(part -> part == VisitPart.SET).isPresent()
                && round.store()
                        .kitSet(set)
                        .filter(kit -> kit.purpose() == KitPurpose.TRAPS)
                        .isPresent();
        return laid
                ? visits.stream()
                        .filter(later -> later.site().equals(visit.site())
                                && later.kitSets().contains(set)
                                && later.start().isAfter(visit.start()))
                        .map(Activity::end)
                        .min(Comparator.naturalOrder())
                        .orElseGet(() -> end(round))
                : visit.end();
    }

    private static Instant end(Round round) {
        return round.header()
                .lastDay()
                .plusDays(1)
                .atStartOfDay(round.header().zone())
                .toInstant();
    }
}
