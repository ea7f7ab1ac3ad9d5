package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.CrewDay;

/** The load lines of the crew-days of one date, gathered kind by kind. */
final class DayLines {

    private static final Comparator<LoadLine> ORDER = Comparator.comparing(LoadLine::container)
            .thenComparing(LoadLine::kind)
            .thenComparing(LoadLine::label);

    private final Store store;
    private final Map<String, List<LoadLine>> byCrew = new TreeMap<>();

    DayLines(Store store) {
        this.store = store;
    }

    void add(CrewDay day, LoadLine line) {
        byCrew.computeIfAbsent(day.crew(), key -> new ArrayList<>()).add(line);
    }

    /** Containers together, then by kind. */
    CrewDayLoad load(CrewDay day) {
        List<LoadLine> lines = byCrew.getOrDefault(day.crew(), List.of()).stream()
                .sorted(ORDER)
                .toList();
        return new CrewDayLoad(day.crew(), day.date(), lines);
    }

    /** A line for serials. Picks in any order; each serial is listed once, in store order. */
    LoadLine serials(DayNeed need, List<StoreItem> picked, String label) {
        List<StoreItem> items = store.items().stream().filter(picked::contains).toList();
        return new LoadLine(
                need.container(),
                need.kind(),
                label + notes(items),
                picked.size(),
                items.stream().map(StoreItem::unit).findFirst().orElse("each"),
                items.stream().map(StoreItem::id).toList(),
                validUntil(items),
                need.sites());
    }

    /** What the store says of single things that are taken, such as what a meter reads. */
    private static String notes(List<StoreItem> items) {
        return items.stream()
                .filter(item -> item.kitSet().isEmpty())
                .flatMap(item -> item.stateNote().map(note -> "; " + item.id() + ": " + note).stream())
                .collect(Collectors.joining());
    }

    /** The earliest end of a certificate or date of expiry. */
    static Optional<LocalDate> validUntil(List<StoreItem> items) {
        List<LocalDate> ends = new ArrayList<>();
        for (StoreItem item : items) {
            item.expires().ifPresent(ends::add);
            item.certificates().stream().map(ItemCertificate::validUntil).forEach(ends::add);
        }
        return ends.stream().min(LocalDate::compareTo);
    }
}
