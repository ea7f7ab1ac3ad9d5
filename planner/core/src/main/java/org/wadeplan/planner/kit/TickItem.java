package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.kit.TickObjection.Ground;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** What stands against one item or kit set itself, whatever the list says. */
final class TickItem {

    private final Round round;
    private final WeekPlan week;
    private final KitStates states;
    private final ZoneId zone;

    TickItem(Round round, WeekPlan week, KitStates states) {
        this.round = round;
        this.week = week;
        this.states = states;
        this.zone = round.header().zone();
    }

    List<TickObjection> ofItem(StoreItem item, CrewDay day, Instant at) {
        List<TickObjection> found = new ArrayList<>();
        if (item.state() == StoreState.OUT_OF_SERVICE) {
            found.add(new TickObjection(
                    Ground.OUT_OF_SERVICE,
                    item.id() + " is out of service" + ItemFitness.tag(item),
                    "repair it or take another"));
        }
        there(item, at).ifPresent(found::add);
        found.addAll(valid(item, day));
        notClean(item).ifPresent(found::add);
        if (found.stream().noneMatch(one -> one.ground() == Ground.NOT_CLEAN_AND_DRY)) {
            byLedger(item.id(), day, at).ifPresent(found::add);
        }
        item.kitSet().flatMap(round.store()::kitSet).ifPresent(set -> found.addAll(ofSet(set, day, at)));
        return found;
    }

    List<TickObjection> ofSet(KitSet set, CrewDay day, Instant at) {
        List<TickObjection> found = new ArrayList<>();
        if (FixedLines.liesInWater(set, day)) {
            return List.of(new TickObjection(
                    Ground.NOT_THERE,
                    set.id() + " is in the water, set on a day before",
                    "bring it back with the lift"));
        }
        byLedger(set.id(), day, at).ifPresent(found::add);
        usedBefore(set, day, at).ifPresent(found::add);
        return found;
    }

    private Optional<TickObjection> byLedger(String id, CrewDay day, Instant at) {
        List<String> waters = day.visits().stream()
                .filter(visit ->
                        visit.kitSets().contains(id) || round.store().kitSet(id).isEmpty())
                .flatMap(visit -> visit.site().flatMap(round::site).flatMap(round::waterOf).stream())
                .map(Water::id)
                .distinct()
                .toList();
        return states.against(id, at, waters)
                .map(words -> new TickObjection(Ground.NOT_CLEAN_AND_DRY, words, "clean and dry it, or take another"));
    }

    List<String> remarks(TickRequest request) {
        String id = round.store().items().stream()
                .filter(one -> one.id().equals(request.item()))
                .findFirst()
                .flatMap(StoreItem::kitSet)
                .orElse(request.item());
        return states
                .restsOn(id, request.at())
                .map(words -> "That it is clean and dry rests on " + words + ".")
                .stream()
                .toList();
    }

    private Optional<TickObjection> there(StoreItem item, Instant at) {
        Optional<Instant> late = item.availableFrom().filter(at::isBefore);
        Optional<Instant> gone = item.availableUntil().filter(at::isAfter);
        return late.or(() -> gone)
                .map(time -> new TickObjection(
                        Ground.NOT_THERE,
                        item.id()
                                + (late.isPresent() ? " is here from " : " was to be back by ")
                                + KitWords.moment(time, zone)
                                + ItemFitness.tag(item),
                        "take another, or load later"));
    }

    /** Every certificate on file that a kit need or the vehicle's papers ask for, and the date of expiry. */
    private List<TickObjection> valid(StoreItem item, CrewDay day) {
        LocalDate date = day.date();
        List<TickObjection> found = new ArrayList<>();
        ItemFitness.expiry(item, date)
                .ifPresent(one -> found.add(new TickObjection(Ground.NOT_VALID, one.found(), one.remedy())));
        asked(item).stream()
                .flatMap(name -> ItemFitness.certificate(item, name, date).stream())
                .forEach(one -> found.add(new TickObjection(Ground.NOT_VALID, one.found(), one.remedy())));
        return found;
    }

    private List<String> asked(StoreItem item) {
        List<String> names = new ArrayList<>(round.store().needs().stream()
                .filter(need -> need.kind().equals(item.kind()))
                .map(KitNeed::certificate)
                .flatMap(Optional::stream)
                .toList());
        item.certificates().stream().map(ItemCertificate::certificate).forEach(names::add);
        return names.stream().distinct().sorted().toList();
    }

    private static Optional<TickObjection> notClean(StoreItem item) {
        String touched = item.detail().exposedTo().isEmpty()
                ? ""
                : ", in " + String.join(", ", item.detail().exposedTo()) + " since its last cleaning";
        boolean dirty = item.state() != StoreState.CLEAN_DRY && item.state() != StoreState.OUT_OF_SERVICE;
        return dirty || !touched.isEmpty()
                ? Optional.of(new TickObjection(
                        Ground.NOT_CLEAN_AND_DRY,
                        item.id() + " is "
                                + item.state().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ItemFitness.tag(item)
                                + touched,
                        "clean and dry it, or take another"))
                : Optional.empty();
    }

    /** A tick long before the day says nothing where the set goes out in between. */
    private Optional<TickObjection> usedBefore(KitSet set, CrewDay day, Instant at) {
        return week.crewDays().stream()
                .filter(other -> !other.equals(day) && other.start().isBefore(day.start()))
                .filter(other -> other.visits().stream()
                        .anyMatch(visit -> visit.kitSets().contains(set.id())
                                && !visit.start().isBefore(at)
                                && visit.start().isBefore(day.start())))
                .min(Comparator.comparing(CrewDay::start))
                .map(other -> new TickObjection(
                        Ground.USED_BEFORE,
                        set.id() + " goes out with crew " + other.crew() + " on " + other.date()
                                + " before this crew-day",
                        "tick it when it is loaded, after that day"));
    }
}
