package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** What is left of the things that are used up, burnt down day by day, the lot that expires first before the others. */
final class Stock {

    private static final Comparator<StoreItem> FIRST_TO_EXPIRE =
            Comparator.comparing(lot -> lot.expires().orElse(LocalDate.MAX));

    private final List<StoreItem> lots;
    private final Map<String, Double> used = new LinkedHashMap<>();

    Stock(List<StoreItem> items) {
        this.lots = items.stream().sorted(FIRST_TO_EXPIRE).toList();
    }

    /**
     * What was taken.
     *
     * @param validUntil the earliest expiry among the lots
     */
    record Taken(double quantity, Optional<LocalDate> validUntil) {}

    /** Takes as much as there is, up to what is asked, from lots in date on the day. */
    Taken take(String kind, LocalDate date, double quantity) {
        double open = quantity;
        List<LocalDate> ends = new ArrayList<>();
        for (StoreItem lot : usable(kind, date)) {
            double part = Math.min(open, left(lot));
            if (part > 0) {
                used.merge(lot.id(), part, Double::sum);
                lot.expires().ifPresent(ends::add);
                open -= part;
            }
        }
        return new Taken(quantity - open, ends.stream().min(LocalDate::compareTo));
    }

    /** What is left in date, without taking any. */
    double left(String kind, LocalDate date) {
        return usable(kind, date).stream().mapToDouble(this::left).sum();
    }

    private double left(StoreItem lot) {
        return lot.quantity() - used.getOrDefault(lot.id(), 0.0);
    }

    private List<StoreItem> usable(String kind, LocalDate date) {
        return lots.stream()
                .filter(lot -> lot.kind().equals(kind)
                        && lot.state() != StoreState.OUT_OF_SERVICE
                        && ItemFitness.expiry(lot, date).isEmpty())
                .toList();
    }
}
