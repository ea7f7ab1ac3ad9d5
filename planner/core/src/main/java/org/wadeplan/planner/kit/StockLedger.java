package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** Writes down what each day asks of the stock, what it gets, and what is left. */
final class StockLedger {

    private final Store store;
    private final Stock stock;
    private final SortedMap<String, SortedMap<LocalDate, double[]>> days = new TreeMap<>();
    private final SortedMap<String, Double> starts = new TreeMap<>();

    StockLedger(Store store, Stock stock) {
        this.store = store;
        this.stock = stock;
    }

    /** Takes what there is, and writes down what was asked. */
    Stock.Taken take(String kind, LocalDate date, double quantity) {
        starts.computeIfAbsent(kind, any -> stock.left(kind, date));
        Stock.Taken taken = stock.take(kind, date, quantity);
        double[] day = days.computeIfAbsent(kind, any -> new TreeMap<>()).computeIfAbsent(date, any -> new double[3]);
        day[0] += quantity;
        day[1] += taken.quantity();
        day[2] = stock.left(kind, date);
        return taken;
    }

    double left(String kind, LocalDate date) {
        return stock.left(kind, date);
    }

    List<StockLine> lines() {
        List<StockLine> lines = new ArrayList<>();
        for (Map.Entry<String, SortedMap<LocalDate, double[]>> entry : days.entrySet()) {
            lines.add(line(entry.getKey(), entry.getValue()));
        }
        return List.copyOf(lines);
    }

    private StockLine line(String kind, SortedMap<LocalDate, double[]> byDate) {
        List<StoreItem> lots = store.ofKind(kind);
        LocalDate first = byDate.firstKey();
        List<StockLine.StockDay> stockDays = new ArrayList<>();
        byDate.forEach((date, day) -> stockDays.add(new StockLine.StockDay(date, day[0], day[1], day[2])));
        return new StockLine(
                kind,
                lots.stream().map(StoreItem::unit).findFirst().orElse(""),
                starts.getOrDefault(kind, 0.0),
                stockDays.stream().mapToDouble(StockLine.StockDay::asked).sum(),
                List.copyOf(stockDays),
                lots.stream()
                        .filter(lot -> against(lot, first).isEmpty())
                        .flatMap(lot -> lot.expires().stream())
                        .min(LocalDate::compareTo),
                lots.stream()
                        .flatMap(lot -> Stream.of(lot).flatMap(one -> against(one, first).stream()))
                        .toList());
    }

    private static Optional<String> against(StoreItem lot, LocalDate date) {
        String quantity = ShortageWords.number(lot.quantity()) + " " + lot.unit() + " of ";
        if (lot.state() == StoreState.OUT_OF_SERVICE) {
            return Optional.of(quantity + lot.id() + ", out of service" + ItemFitness.tag(lot));
        }
        return ItemFitness.expiry(lot, date).map(obstacle -> quantity + obstacle.found());
    }
}
