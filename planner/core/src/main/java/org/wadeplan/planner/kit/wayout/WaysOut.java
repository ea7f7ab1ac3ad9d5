package org.wadeplan.planner.kit.wayout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.kit.ShortageSummary;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;

/**
 * Looks for ways out of every shortage of a week and tries each of them: the change is made in memory, the week laid out
 * again, loaded and held against every rule of the week. A way is open only where the shortage is gone and nothing else
 * got worse.
 */
public final class WaysOut {

    private static final Comparator<WayOut> CHEAPEST_FIRST =
            Comparator.comparing(WayOut::result).thenComparing(WayOut::cost);

    private final Replan replan;
    private final WayJudge judge;
    private final ItemWays items;
    private final LaterStart later;
    private final OtherDay otherDay;

    private WaysOut(Replan replan) {
        this.replan = replan;
        this.judge = new WayJudge(replan);
        this.items = new ItemWays(replan);
        this.later = new LaterStart(replan);
        this.otherDay = new OtherDay(replan);
    }

    /** For every kind that is short in the plan, in the order of the summary. */
    public static List<ShortageWays> of(Round round, RoundPlan plan) {
        WaysOut ways = new WaysOut(new Replan(round, plan));
        return ShortageSummary.of(plan.kit()).stream()
                .map(shortage -> new ShortageWays(shortage, ways.of(shortage)))
                .toList();
    }

    /** For every crew-day without a vehicle that may drive. */
    public static List<VehicleFinding> vehicles(Round round, RoundPlan plan) {
        Replan replan = new Replan(round, plan);
        WayJudge judge = new WayJudge(replan);
        VehicleWays vehicles = new VehicleWays(replan);
        return plan.kit().vehicles().stream()
                .map(shortage -> new VehicleFinding(
                        shortage,
                        vehicles.of(shortage).stream()
                                .map(change -> judge.judgeVehicle(change, shortage))
                                .sorted(CHEAPEST_FIRST)
                                .toList()))
                .toList();
    }

    /** A crew-day whose vehicle may not drive, with the ways out. */
    public record VehicleFinding(Shortage finding, List<WayOut> ways) {}

    private List<WayOut> of(ShortageSummary shortage) {
        List<ShortDay> days = ShortDay.of(replan.before(), shortage.kind());
        if (days.isEmpty()) {
            return List.of();
        }
        List<WayOut> ways = new ArrayList<>(shortage.unit().isBlank() ? ofItems(days) : ofStock(shortage));
        boolean cheap = ways.stream()
                .anyMatch(
                        way -> way.result() == WayOut.Result.OPEN && way.cost().compareTo(WayCost.HIRE) <= 0);
        if (!cheap) {
            tried(items.got(days, shortage.shortBy(), shortage.unit()), shortage.kind())
                    .forEach(ways::add);
        }
        ways.sort(CHEAPEST_FIRST);
        return List.copyOf(ways);
    }

    private List<WayOut> ofStock(ShortageSummary shortage) {
        StockWays stock = new StockWays(replan);
        return tried(stock.optionalCleanings(shortage.kind(), shortage.unit()), shortage.kind()).stream()
                .filter(way -> way.result() != WayOut.Result.REFUSED)
                .toList();
    }

    private List<WayOut> ofItems(List<ShortDay> days) {
        String kind = days.get(0).kind();
        List<WayOut> ways = new ArrayList<>();
        List<Change> onItems = new ArrayList<>(items.fromOtherSet(days));
        onItems.addAll(items.renewed(days));
        onItems.addAll(items.repaired(days));
        tried(onItems, kind).stream()
                .filter(way -> way.result() != WayOut.Result.REFUSED)
                .forEach(ways::add);
        for (ShortDay day : days.subList(0, 1)) {
            best(later.sharing(day), kind, days.size()).ifPresent(ways::add);
            best(later.untilItComes(day), kind, days.size())
                    .filter(way -> way.result() != WayOut.Result.REFUSED)
                    .ifPresent(ways::add);
        }
        if (days.size() == 1) {
            first(otherDay.inTheWeek(days.get(0)), kind).ifPresent(ways::add);
            first(otherDay.inTheReserve(days.get(0)), kind).ifPresent(ways::add);
        }
        return ways;
    }

    private List<WayOut> tried(List<Change> changes, String kind) {
        return changes.stream().map(change -> judge.judge(change, kind)).toList();
    }

    /** The first that is open, with why the one before all others was not; nothing where none is. */
    private Optional<WayOut> first(List<Change> changes, String kind) {
        Optional<WayOut> refused = Optional.empty();
        for (Change change : changes) {
            WayOut way = judge.judge(change, kind);
            if (way.result() == WayOut.Result.OPEN) {
                String plainer = refused.map(one -> "; refused: " + one.what() + " (" + one.found() + ")")
                        .orElse("");
                return Optional.of(new WayOut(way.cost(), way.what(), way.result(), way.found() + plainer));
            }
            refused = refused.or(() -> Optional.of(way));
        }
        return Optional.empty();
    }

    /** The first that works at all, or the first with why it does not. */
    private Optional<WayOut> best(List<LaterStart.Variants> all, String kind, int shortDays) {
        List<WayOut> tried = new ArrayList<>();
        for (LaterStart.Variants variants : all) {
            tried.add(best(variants, kind));
        }
        return tried.stream()
                .filter(way ->
                        way.result() == WayOut.Result.OPEN || (shortDays > 1 && way.result() != WayOut.Result.REFUSED))
                .findFirst()
                .or(() -> tried.stream().findFirst());
    }

    private WayOut best(LaterStart.Variants variants, String kind) {
        List<WayOut> tried = tried(variants.changes(), kind);
        return tried.stream()
                .filter(way -> way.result() == WayOut.Result.OPEN)
                .findFirst()
                .orElse(tried.get(0));
    }
}
