package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One kind that is short, over all its days: things that come back by the worst day, things that are used up by the week.
 *
 * @param days the days on which it is short
 * @param needed on the worst day; of what is used up, in the whole week
 * @param available that may go out on that day; of what is used up, in date
 * @param unit empty for things that are counted
 */
public record ShortageSummary(String kind, List<LocalDate> days, double needed, double available, String unit) {

    public double shortBy() {
        return needed - available;
    }

    /** By the first short day, then kind. */
    public static List<ShortageSummary> of(KitPlan kit) {
        return of(kit.shortages(), kit.stock());
    }

    static List<ShortageSummary> of(List<Shortage> shortages, List<StockLine> stock) {
        Map<String, List<Shortage>> byKind = new LinkedHashMap<>();
        for (Shortage shortage : shortages) {
            byKind.computeIfAbsent(shortage.kind(), kind -> new ArrayList<>()).add(shortage);
        }
        return byKind.entrySet().stream()
                .map(entry -> summary(entry.getKey(), entry.getValue(), stock))
                .toList();
    }

    private static ShortageSummary summary(String kind, List<Shortage> shortages, List<StockLine> stock) {
        List<LocalDate> days =
                shortages.stream().map(Shortage::date).distinct().sorted().toList();
        for (StockLine line : stock) {
            if (line.kind().equals(kind)) {
                return new ShortageSummary(kind, days, line.asked(), line.asked() - line.shortBy(), line.unit());
            }
        }
        Shortage worst = shortages.get(0);
        for (Shortage shortage : shortages) {
            worst = missing(shortage) > missing(worst) ? shortage : worst;
        }
        return new ShortageSummary(kind, days, worst.needed(), worst.available(), "");
    }

    private static double missing(Shortage shortage) {
        return shortage.needed() - shortage.available();
    }
}
