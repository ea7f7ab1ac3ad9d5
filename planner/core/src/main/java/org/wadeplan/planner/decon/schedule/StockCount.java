package org.wadeplan.planner.decon.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.planner.decon.BathAmount;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Burns the products of the week's baths down day by day, the lot that expires first before the others. */
final class StockCount {

    private final Round round;
    private final WeekPlan week;

    private StockCount(Round round, WeekPlan week) {
        this.round = round;
        this.week = week;
    }

    private record Product(String kind, String unit) {}

    static List<BathStock> of(Round round, WeekPlan week, List<PlannedBath> baths) {
        StockCount count = new StockCount(round, week);
        Set<Product> products = new LinkedHashSet<>();
        baths.forEach(bath -> bath.amount()
                .filter(one -> one.quantity().isPresent())
                .ifPresent(amount -> products.add(count.product(bath, amount))));
        return products.stream().map(product -> count.stock(product, baths)).toList();
    }

    private BathStock stock(Product product, List<PlannedBath> baths) {
        List<BathStock.Day> days = days(product, baths);
        List<OptionalClean> optional = savingAny(product, needed(days));
        List<BathStock.Day> without = optional.isEmpty() ? days : days(product, bathsWithout(optional));
        LocalDate first = days.get(0).day();
        return new BathStock(
                product.kind(),
                product.unit(),
                needed(days),
                lots(product).stream()
                        .filter(lot -> inDate(lot, first))
                        .mapToDouble(lot -> lot.quantity() * StockShare.of(lot, first))
                        .sum(),
                lots(product).stream()
                        .filter(lot -> !inDate(lot, first))
                        .mapToDouble(StoreItem::quantity)
                        .sum(),
                lots(product).stream()
                        .filter(lot -> inDate(lot, first))
                        .mapToDouble(lot -> StockShare.of(lot, first))
                        .min()
                        .orElse(1),
                missing(days),
                days,
                optional,
                needed(without),
                missing(without));
    }

    private List<OptionalClean> savingAny(Product product, double needed) {
        return OptionalCleans.of(round, week).stream()
                .filter(one -> needed(days(product, bathsWithout(List.of(one)))) < needed)
                .toList();
    }

    private List<PlannedBath> bathsWithout(List<OptionalClean> left) {
        List<DeconTask> kept = week.decon().stream()
                .filter(task -> left.stream().noneMatch(one -> one.task().equals(task)))
                .toList();
        WeekPlan shorter = new WeekPlan(
                week.crewDays(), kept, week.placements(), week.unplaced(), week.estimatedLegs(), week.score());
        List<BenchTask> tasks = BenchScheduler.schedule(
                BenchRequests.of(round, shorter), round.biosecurity().resources());
        return PlannedBaths.of(round, tasks);
    }

    private List<BathStock.Day> days(Product product, List<PlannedBath> baths) {
        SortedMap<LocalDate, List<BathAmount>> byDay = new TreeMap<>();
        for (PlannedBath bath : baths) {
            bath.amount()
                    .filter(amount -> amount.quantity().isPresent()
                            && product(bath, amount).equals(product))
                    .ifPresent(amount -> byDay.computeIfAbsent(bath.day(), day -> new ArrayList<>())
                            .add(amount));
        }
        Map<String, Double> used = new LinkedHashMap<>();
        List<BathStock.Day> days = new ArrayList<>();
        byDay.forEach((day, amounts) -> {
            double needed = amounts.stream()
                    .mapToDouble(amount -> amount.quantity().orElse(0))
                    .sum();
            double taken = taken(product, day, needed, used);
            days.add(new BathStock.Day(day, amounts.size(), rounded(needed), rounded(needed - taken)));
        });
        return List.copyOf(days);
    }

    /** Takes from the lots in date and notes what each has lost. */
    private double taken(Product product, LocalDate day, double asked, Map<String, Double> used) {
        double open = asked;
        for (StoreItem lot : lots(product)) {
            double share = StockShare.of(lot, day);
            double left = (lot.quantity() - used.getOrDefault(lot.id(), 0.0)) * share;
            double part = inDate(lot, day) ? Math.min(open, left) : 0;
            used.merge(lot.id(), part / share, Double::sum);
            open -= part;
        }
        return asked - open;
    }

    private List<StoreItem> lots(Product product) {
        return round.store().ofKind(product.kind()).stream()
                .filter(lot ->
                        lot.state() != StoreState.OUT_OF_SERVICE && lot.unit().equals(product.unit()))
                .sorted(Comparator.comparing((StoreItem lot) -> lot.expires().orElse(LocalDate.MAX))
                        .thenComparing(StoreItem::id))
                .toList();
    }

    private static boolean inDate(StoreItem lot, LocalDate day) {
        return lot.expires().map(last -> !last.isBefore(day)).orElse(true);
    }

    /** The store's kind whose word the agent's name holds; the agent itself, or its tub, where the store has none. */
    private Product product(PlannedBath bath, BathAmount amount) {
        String agent = bath.agent().orElse(bath.place().label());
        String lower = agent.toLowerCase(Locale.ROOT);
        String kind = round.store().items().stream()
                .map(StoreItem::kind)
                .filter(word -> lower.contains(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse(agent);
        return new Product(kind, amount.unit());
    }

    private static double needed(List<BathStock.Day> days) {
        return rounded(days.stream().mapToDouble(BathStock.Day::needed).sum());
    }

    private static double missing(List<BathStock.Day> days) {
        return rounded(days.stream().mapToDouble(BathStock.Day::shortBy).sum());
    }

    /** To a hundredth of a gram, so that no shortage is made of what sums of fractions leave over. */
    private static double rounded(double quantity) {
        return Math.round(quantity * 100_000) / 100_000.0;
    }
}
