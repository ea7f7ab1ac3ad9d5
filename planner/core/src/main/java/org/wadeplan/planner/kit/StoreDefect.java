package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/**
 * An item of the store that may not go out on some or all days of the round, with its tag.
 *
 * @param found what stands against it, in words
 * @param tag the store's own note; empty where it has none
 */
public record StoreDefect(String item, String label, String found, String tag) {

    /** In store order. A certificate that ends before the round's last day counts, and so does every item not clean and dry. */
    public static List<StoreDefect> of(Round round) {
        LocalDate first = round.header().firstDay();
        LocalDate last = round.header().lastDay();
        List<StoreDefect> defects = new ArrayList<>();
        for (StoreItem item : round.store().items()) {
            List<String> found = new ArrayList<>();
            if (item.state() != StoreState.CLEAN_DRY) {
                found.add(item.state().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            }
            item.expires()
                    .filter(last::isAfter)
                    .ifPresent(end -> found.add((first.isAfter(end) ? "expired after " : "expires after ") + end));
            item.certificates().stream()
                    .map(ItemCertificate::certificate)
                    .distinct()
                    .forEach(name -> certificate(item, name, first, last).ifPresent(found::add));
            hours(item, round).ifPresent(found::add);
            if (!found.isEmpty()) {
                defects.add(new StoreDefect(
                        item.id(),
                        item.label(),
                        String.join("; ", found),
                        item.stateNote().orElse("")));
            }
        }
        return List.copyOf(defects);
    }

    /** Something that comes after the round's first day has begun, or has to be back before its last day is over. */
    private static Optional<String> hours(StoreItem item, Round round) {
        ZoneId zone = round.header().zone();
        Instant begins = round.header().firstDay().atStartOfDay(zone).toInstant();
        Instant ends = round.header().lastDay().plusDays(1).atStartOfDay(zone).toInstant();
        String from = item.availableFrom()
                .filter(begins::isBefore)
                .map(time -> " from " + KitWords.moment(time, zone))
                .orElse("");
        String until = item.availableUntil()
                .filter(ends::isAfter)
                .map(time -> " until " + KitWords.moment(time, zone))
                .orElse("");
        return from.isEmpty() && until.isEmpty() ? Optional.empty() : Optional.of("there" + from + until);
    }

    private static Optional<String> certificate(StoreItem item, String name, LocalDate first, LocalDate last) {
        return first.datesUntil(last.plusDays(1))
                .flatMap(day -> ItemFitness.certificate(item, name, day).stream())
                .map(Obstacle::found)
                .map(words -> words.substring(words.indexOf(": ") + 2))
                .findFirst();
    }
}
