package org.wadeplan.desktop.kit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.session.DayWork;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.TickObjection;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** The load list of one crew-day, container by container, a line for each serial. */
final class LoadRows {

    private static final int LONGEST_REASON = 90;

    private final Round round;
    private final CrewDayLoad load;
    private final DayWork work;
    private final Function<String, List<TickObjection>> against;
    private final ZoneId zone;

    /**
     * A list to make.
     *
     * @param against what stands in the way of loading an item; nothing where it may go
     */
    LoadRows(Round round, CrewDayLoad load, DayWork work, Function<String, List<TickObjection>> against) {
        this.round = round;
        this.load = load;
        this.work = work;
        this.against = against;
        this.zone = round.header().zone();
    }

    List<LoadRow> rows() {
        Map<String, List<LoadRow>> byContainer = new LinkedHashMap<>();
        for (LoadLine line : load.lines()) {
            byContainer
                    .computeIfAbsent(line.container(), name -> new ArrayList<>())
                    .addAll(lines(line));
        }
        List<LoadRow> all = new ArrayList<>();
        byContainer.forEach((container, rows) -> {
            all.add(head(container, rows));
            all.addAll(rows);
        });
        return List.copyOf(all);
    }

    private static LoadRow head(String container, List<LoadRow> rows) {
        long ticked =
                rows.stream().filter(row -> row.box() == LoadRow.Box.TICKED).count();
        long all = rows.stream().filter(LoadRow::tickable).count();
        return new LoadRow(
                container,
                "",
                LoadRow.Box.HEAD,
                "",
                container,
                "",
                "",
                Mark.RESERVE,
                Words.of("kit.progress", ticked, all),
                "");
    }

    private List<LoadRow> lines(LoadLine line) {
        return line.items().isEmpty()
                ? List.of(bulk(line))
                : line.items().stream().map(item -> serial(line, item)).toList();
    }

    /** What is counted out of a lot: the first lot that is in date and in service stands for it. */
    private LoadRow bulk(LoadLine line) {
        List<StoreItem> lots = round.store().ofKind(line.kind());
        if (line.quantity() <= 0) {
            return row(line, line.kind(), "", line.label(), quantity(0, line.unit()), Optional.empty());
        }
        String lot = lots.stream()
                .filter(one -> one.expires().filter(load.date()::isAfter).isEmpty()
                        && one.state() != StoreState.OUT_OF_SERVICE)
                .findFirst()
                .or(() -> lots.stream().findFirst())
                .map(StoreItem::id)
                .orElse(line.kind());
        return row(line, lot, lot, line.label(), quantity(line.quantity(), line.unit()), line.validUntil());
    }

    private LoadRow serial(LoadLine line, String id) {
        Optional<StoreItem> item = item(round, id);
        boolean alone = line.items().size() == 1;
        String what = alone ? line.label() : item.map(StoreItem::label).orElse(line.label());
        double quantity = alone
                ? line.quantity()
                : line.items().size() == line.quantity()
                        ? 1
                        : item.map(StoreItem::quantity).orElse(1.0);
        return row(line, id, id, what, quantity(quantity, line.unit()), item.flatMap(LoadRows::validTo));
    }

    static Optional<StoreItem> item(Round round, String id) {
        return round.store().items().stream()
                .filter(item -> item.id().equals(id))
                .findFirst();
    }

    /** The first day on which something of it ends: a certificate or its date of expiry. */
    private static Optional<LocalDate> validTo(StoreItem item) {
        return Stream.concat(
                        item.expires().stream(), item.certificates().stream().map(ItemCertificate::validUntil))
                .min(LocalDate::compareTo);
    }

    private LoadRow row(
            LoadLine line, String item, String serial, String what, String quantity, Optional<LocalDate> validTo) {
        Optional<LoadTick> tick = work.tick(load.date(), load.crew(), item);
        boolean none = line.quantity() <= 0;
        List<TickObjection> objections = none || tick.isPresent() ? List.of() : against.apply(item);
        LoadRow.Box box = none ? LoadRow.Box.NONE : tick.isPresent() ? LoadRow.Box.TICKED : LoadRow.Box.OPEN;
        return new LoadRow(
                line.container() + " / " + item,
                item,
                box,
                serial,
                what,
                quantity,
                validTo.map(LocalDate::toString).orElse(""),
                mark(none, tick, objections),
                none ? Words.of("kit.nothingThere") : tick.map(this::loaded).orElseGet(() -> open(item, objections)),
                String.join(", ", line.forSites()));
    }

    private static Mark mark(boolean none, Optional<LoadTick> tick, List<TickObjection> against) {
        if (none) {
            return Mark.NOT_PLANNED;
        }
        if (tick.isPresent()) {
            return tick.get().overrideBy().isPresent() ? Mark.WARNING : Mark.PLANNED;
        }
        return against.isEmpty() ? Mark.RESERVE : Mark.ERROR;
    }

    private String loaded(LoadTick tick) {
        String said = Words.of("kit.loadedBy", Times.clock(tick.tickedAt(), zone), tick.by());
        return tick.overrideBy()
                .map(name -> said + "; "
                        + Words.of("kit.letGo", name, tick.overrideReason().orElse("")))
                .orElse(said);
    }

    private String open(String item, List<TickObjection> objections) {
        if (objections.isEmpty()) {
            return state(item);
        }
        String first = shortened(objections.get(0).words());
        int more = objections.size() - 1;
        return Words.of("kit.notFit", first) + (more == 0 ? "" : " " + Words.count("count.moreReason", more));
    }

    /** The list has room for the beginning; a tick shows the whole. */
    private static String shortened(String words) {
        if (words.length() <= LONGEST_REASON) {
            return words;
        }
        int space = words.lastIndexOf(' ', LONGEST_REASON);
        return words.substring(0, space > 0 ? space : LONGEST_REASON) + " …";
    }

    private String state(String id) {
        return item(round, id)
                .map(StoreItem::state)
                .or(() -> round.store().kitSet(id).map(set -> set.state()))
                .map(LoadRows::words)
                .orElse(Words.of("kit.open"));
    }

    private static String words(StoreState state) {
        return Words.of("store." + state.name());
    }

    private static String quantity(double value, String unit) {
        return BigDecimal.valueOf(value)
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " " + unit;
    }
}
