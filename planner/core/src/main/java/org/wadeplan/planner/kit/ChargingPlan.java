package org.wadeplan.planner.kit;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/**
 * Which pack goes on which charger when: on the crew's return, the one that is needed again soonest first, each on the
 * place that is free soonest.
 */
public final class ChargingPlan {

    private static final Comparator<Use> SOONEST_NEEDED = Comparator.comparing(Use::back)
            .thenComparing(use -> use.needed().orElse(Instant.MAX))
            .thenComparing(Use::pack);

    private final List<Place> places;

    private ChargingPlan(Round round) {
        this.places = round.store().ofKind("charger").stream()
                .filter(charger -> charger.state() != StoreState.OUT_OF_SERVICE)
                .flatMap(ChargingPlan::places)
                .toList();
    }

    /** A place for one pack; {@code freeAt} moves on as packs are put on it. */
    private static final class Place {
        private final String name;
        private final OptionalDouble chargeH;
        private Instant freeAt = Instant.MIN;

        private Place(String name, OptionalDouble chargeH) {
            this.name = name;
            this.chargeH = chargeH;
        }
    }

    /** A pack that came back. */
    private record Use(LocalDate date, String pack, Instant back, Optional<Instant> needed) {}

    /** In the order in which packs go on; empty where the store has no charger in service. */
    public static List<PackCharge> of(Round round, List<CrewDay> crewDays, KitPlan kit) {
        ChargingPlan plan = new ChargingPlan(round);
        return plan.places.isEmpty()
                ? List.of()
                : uses(crewDays, kit).stream().map(plan::charge).toList();
    }

    private static Stream<Place> places(StoreItem charger) {
        return IntStream.rangeClosed(1, (int) charger.quantity())
                .mapToObj(number -> new Place(
                        charger.id() + " no. " + number, charger.detail().chargeH()));
    }

    private PackCharge charge(Use use) {
        Place place =
                places.stream().min(Comparator.comparing(one -> one.freeAt)).orElseThrow();
        boolean change = place.freeAt.isAfter(use.back());
        Instant from = change ? place.freeAt : use.back();
        Optional<Instant> until = place.chargeH.isPresent()
                ? Optional.of(from.plus(Duration.ofSeconds(Math.round(place.chargeH.getAsDouble() * 3600))))
                : Optional.empty();
        place.freeAt = until.orElse(from);
        return new PackCharge(use.date(), use.pack(), place.name, from, until, use.needed(), change);
    }

    private static List<Use> uses(List<CrewDay> crewDays, KitPlan kit) {
        List<Use> uses = new ArrayList<>();
        for (CrewDay day : crewDays) {
            for (String pack : packs(day, kit)) {
                uses.add(new Use(day.date(), pack, back(day), next(pack, day, crewDays, kit)));
            }
        }
        uses.sort(SOONEST_NEEDED);
        return uses;
    }

    private static List<String> packs(CrewDay day, KitPlan kit) {
        return kit.loads().stream()
                .filter(load -> load.crew().equals(day.crew()) && load.date().equals(day.date()))
                .flatMap(load -> load.lines().stream())
                .filter(line -> line.kind().equals(DayNeeds.BATTERY_PACK))
                .flatMap(line -> line.items().stream())
                .distinct()
                .toList();
    }

    /** When the crew is back from its last drive. */
    static Instant back(CrewDay day) {
        return day.activities().stream()
                .filter(activity -> activity.kind() == ActivityKind.TRAVEL)
                .reduce((first, last) -> last)
                .map(activity -> activity.end())
                .orElseGet(day::end);
    }

    private static Optional<Instant> next(String pack, CrewDay after, List<CrewDay> crewDays, KitPlan kit) {
        return crewDays.stream()
                .filter(day -> day.start().isAfter(after.start())
                        && day.date().isAfter(after.date())
                        && packs(day, kit).contains(pack))
                .map(CrewDay::start)
                .min(Instant::compareTo);
    }
}
