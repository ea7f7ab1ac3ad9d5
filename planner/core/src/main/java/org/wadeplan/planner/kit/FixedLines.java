package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** Lines that the week itself settles: the vehicle, the kit sets, and the powder of the baths that a crew makes up. */
final class FixedLines {

    /** Where traps are that are only brought back. */
    static final String IN_THE_WATER = "in the water";

    private final Store store;
    private final VehicleCheck vehicles;

    FixedLines(Store store, WeekPlan week) {
        this.store = store;
        this.vehicles = new VehicleCheck(store, week);
    }

    List<LoadLine> lines(CrewDay day) {
        List<LoadLine> lines = new ArrayList<>();
        vehicles.vehicle(day).ifPresent(vehicle -> lines.add(vehicleLine(vehicle)));
        for (String id : kitSets(day)) {
            store.kitSet(id).ifPresent(set -> lines.add(kitSetLine(set, day)));
        }
        return lines;
    }

    Optional<Shortage> shortage(CrewDay day) {
        return vehicles.shortage(day);
    }

    /** What the crew puts into baths that day, by kind. */
    Map<String, DayNeed> bathNeeds(CrewDay day, List<BathPowder.Bath> baths) {
        Map<String, DayNeed> needs = new TreeMap<>();
        for (BathPowder.Bath bath : baths) {
            if (bath.date().equals(day.date()) && bath.crew().equals(day.crew())) {
                DayNeed need = new DayNeed(
                        day,
                        bath.kind(),
                        false,
                        bath.quantityKg(),
                        0,
                        "depot: " + bath.tub(),
                        false,
                        Set.of(),
                        List.of());
                needs.merge(bath.kind(), need, DayNeed::andNextVisit);
            }
        }
        return needs;
    }

    static DayNeed packNeed(CrewDay day, List<String> sites) {
        return new DayNeed(day, DayNeeds.BATTERY_PACK, true, 0, 0, "electrical case", false, Set.of(), sites);
    }

    private static List<String> kitSets(CrewDay day) {
        return day.visits().stream()
                .flatMap(visit -> visit.kitSets().stream())
                .distinct()
                .sorted()
                .toList();
    }

    private static LoadLine vehicleLine(StoreItem vehicle) {
        return new LoadLine(
                "vehicle",
                "vehicle",
                vehicle.label(),
                1,
                vehicle.unit(),
                List.of(vehicle.id()),
                DayLines.validUntil(List.of(vehicle)),
                List.of());
    }

    private LoadLine kitSetLine(KitSet set, CrewDay day) {
        List<String> contents = store.items().stream()
                .filter(item -> item.kitSet().filter(set.id()::equals).isPresent())
                .map(item -> ShortageWords.number(item.quantity()) + " " + item.kind())
                .toList();
        String purpose = set.purpose().name().toLowerCase(Locale.ROOT).replace('_', '-');
        boolean inWater = liesInWater(set, day);
        String inside = inWater
                ? ": in the water, comes back with the lift"
                : contents.isEmpty() ? "" : ": " + String.join(", ", contents);
        List<String> sites = day.visits().stream()
                .filter(visit -> visit.kitSets().contains(set.id()))
                .map(Activity::place)
                .distinct()
                .toList();
        return new LoadLine(
                inWater ? IN_THE_WATER : "kit set",
                "kit-set",
                "kit set " + set.id() + ", " + purpose + inside,
                1,
                "set",
                List.of(set.id()),
                Optional.empty(),
                sites);
    }

    /** Traps that were set on a day before are at the site, not in the store. */
    static boolean liesInWater(KitSet set, CrewDay day) {
        return set.purpose() == KitPurpose.TRAPS
                && day.visits().stream()
                        .filter(visit -> visit.kitSets().contains(set.id()))
                        .findFirst()
                        .flatMap(Activity::part)
                        .filter(part -> part == VisitPart.LIFT)
                        .isPresent();
    }
}
