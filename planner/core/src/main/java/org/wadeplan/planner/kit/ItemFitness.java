package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** Tells whether an item may go out with a crew on a day, and if not, why and what to do. */
final class ItemFitness {

    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ROOT);

    private final ZoneId zone;

    ItemFitness(ZoneId zone) {
        this.zone = zone;
    }

    /** The first thing in the way; empty where the item may go. */
    Optional<Obstacle> obstacle(StoreItem item, DayNeed need) {
        LocalDate date = need.crewDay().date();
        return state(item, need)
                .or(() -> kitSet(item, need))
                .or(() -> expiry(item, date))
                .or(() -> certificates(item, need))
                .or(() -> hours(item, need));
    }

    private static Optional<Obstacle> state(StoreItem item, DayNeed need) {
        String note = tag(item);
        if (item.state() == StoreState.OUT_OF_SERVICE) {
            return Optional.of(
                    new Obstacle(4, item.id() + " is out of service" + note, "repair " + item.id() + " or replace it"));
        }
        if (need.clean() && item.state() != StoreState.CLEAN_DRY) {
            String state = item.state().name().toLowerCase(Locale.ROOT);
            return Optional.of(new Obstacle(
                    2, item.id() + " is " + state + note, "clean and dry " + item.id() + " before loading"));
        }
        return Optional.empty();
    }

    /** The defect tag or other note of the store, in brackets; nothing where it has none. */
    static String tag(StoreItem item) {
        return item.stateNote().map(text -> " (" + text + ")").orElse("");
    }

    private static Optional<Obstacle> kitSet(StoreItem item, DayNeed need) {
        return item.kitSet()
                .filter(set -> !kitSets(need).contains(set))
                .map(set -> new Obstacle(
                        5,
                        item.id() + " belongs to " + set + ", which is not with this crew",
                        "take " + item.id() + " out of " + set + " if that set is clean and stays in"));
    }

    /** Kit sets that the crew has in the water that day. */
    static List<String> kitSets(DayNeed need) {
        return need.crewDay().visits().stream()
                .flatMap(visit -> visit.kitSets().stream())
                .distinct()
                .sorted()
                .toList();
    }

    static Optional<Obstacle> expiry(StoreItem item, LocalDate date) {
        return item.expires()
                .filter(last -> date.isAfter(last))
                .map(last -> new Obstacle(6, item.id() + " expired after " + last, "replace " + item.id()));
    }

    private static Optional<Obstacle> certificates(StoreItem item, DayNeed need) {
        return need.certificates().stream()
                .flatMap(name -> certificate(item, name, need.crewDay().date()).stream())
                .findFirst();
    }

    static Optional<Obstacle> certificate(StoreItem item, String name, LocalDate date) {
        List<ItemCertificate> held = item.certificates().stream()
                .filter(certificate -> certificate.certificate().equals(name))
                .toList();
        if (held.stream().anyMatch(certificate -> certificate.validOn(date))) {
            return Optional.empty();
        }
        String found = held.stream()
                .map(ItemCertificate::validUntil)
                .max(LocalDate::compareTo)
                .map(last -> date.isAfter(last)
                        ? item.id() + ": " + name + " was last valid on " + last
                        : item.id() + ": " + name + " is not valid yet on " + date)
                .orElseGet(() -> item.id() + ": no " + name + " on record");
        return Optional.of(new Obstacle(1, found, "have the " + name + " of " + item.id() + " renewed before " + date));
    }

    private Optional<Obstacle> hours(StoreItem item, DayNeed need) {
        Optional<Obstacle> late = item.availableFrom()
                .filter(from -> from.isAfter(need.crewDay().start()))
                .map(from -> new Obstacle(
                        3,
                        item.id() + " is at the depot from " + words(from.atZone(zone)) + ", loading is at "
                                + words(need.crewDay().start().atZone(zone)),
                        "get " + item.id() + " earlier or load after " + words(from.atZone(zone))));
        return late.or(() -> item.availableUntil()
                .filter(until -> until.isBefore(need.crewDay().end()))
                .map(until -> new Obstacle(
                        3,
                        item.id() + " must be back by " + words(until.atZone(zone)),
                        "keep " + item.id() + " longer")));
    }

    private static String words(ZonedDateTime time) {
        return DAY_TIME.format(time);
    }
}
