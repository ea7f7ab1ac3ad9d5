package org.wadeplan.planner.kit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPer;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/** Adds up what a crew needs on a day from what its visits need. */
final class DayNeeds {

    private static final Set<String> UNITS_THAT_COME_BACK = Set.of("each", "pair", "set", "count");
    static final String BATTERY_PACK = "battery-pack";

    private final Round round;
    private final Store store;
    private final List<VisitKit> visits;

    DayNeeds(Round round, List<VisitKit> visits) {
        this.round = round;
        this.store = round.store();
        this.visits = visits;
    }

    /** By kind. Battery packs are left to {@link BatteryPicker}. */
    SortedMap<String, DayNeed> of(CrewDay crewDay) {
        SortedMap<String, DayNeed> day = new TreeMap<>();
        SortedMap<String, DayNeed> once = new TreeMap<>();
        for (Activity visit : crewDay.visits()) {
            SortedMap<String, DayNeed> one = new TreeMap<>();
            for (VisitKit kit : kits(visit)) {
                for (KitNeed need : kit.needs()) {
                    DayNeed asked = dayNeed(crewDay, kit.site(), need);
                    if (need.per() == KitPer.CREW_DAY) {
                        once.merge(need.kind(), asked, (held, next) -> held.and(next, Math::max));
                    } else {
                        one.merge(need.kind(), asked, (held, next) -> held.and(next, Double::sum));
                    }
                }
            }
            one.forEach((kind, need) -> day.merge(kind, need, DayNeed::andNextVisit));
        }
        once.forEach((kind, need) -> day.merge(kind, need, DayNeed::andNextVisit));
        day.remove(BATTERY_PACK);
        return day;
    }

    /** What visits of this crew-day ask for, in order. */
    List<VisitKit> kits(Activity visit) {
        return visits.stream()
                .filter(kit -> visit.site().filter(kit.site()::equals).isPresent()
                        && visit.part().filter(part -> part == kit.part()).isPresent())
                .toList();
    }

    /** What the store counts in each, pair, set or count comes back; a kind measured in another unit is used up. */
    boolean reusable(String kind) {
        return store.ofKind(kind).isEmpty()
                || store.ofKind(kind).stream().anyMatch(item -> UNITS_THAT_COME_BACK.contains(item.unit()));
    }

    private DayNeed dayNeed(CrewDay crewDay, String site, KitNeed need) {
        double quantity = need.quantity() * people(crewDay, need.per());
        return new DayNeed(
                crewDay,
                need.kind(),
                reusable(need.kind()),
                quantity,
                need.spare(),
                need.container(),
                need.clean(),
                need.certificate().map(Set::of).orElseGet(Set::of),
                List.of(site));
    }

    private long people(CrewDay crewDay, KitPer per) {
        return switch (per) {
            case PERSON -> crewDay.people().size();
            case LIVE_CIRCUIT_PERSON ->
                crewDay.people().stream()
                        .map(round::person)
                        .flatMap(Optional::stream)
                        .filter(Person::liveCircuit)
                        .count();
            case VISIT, CREW_DAY -> 1;
        };
    }
}
