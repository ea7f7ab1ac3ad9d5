package org.wadeplan.planner.kit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.planner.round.StoreItem;

/** Puts a shortage into words: what was found of the kind, and the plainest way out. */
final class ShortageWords {

    private ShortageWords() {}

    static Shortage serials(List<DayNeed> needs, List<DayNeed> shortOf, int available, List<Obstacle> obstacles) {
        DayNeed first = needs.get(0);
        int needed = needs.stream().mapToInt(DayNeed::units).sum();
        List<String> crews = crews(needs);
        String found = obstacles.isEmpty()
                ? "the store has no more"
                : String.join("; ", obstacles.stream().map(Obstacle::found).toList());
        String reason = "crew " + String.join(" and ", crews) + (crews.size() == 1 ? " needs " : " need ") + needed
                + " " + KitWords.kind(first.kind()) + ", " + available + " can go out: " + found;
        String remedy = obstacles.stream()
                .min(Comparator.comparingInt(Obstacle::rank))
                .filter(obstacle -> obstacle.rank() <= 4)
                .map(obstacle -> obstacle.remedy() + "; or ")
                .orElse("");
        return new Shortage(
                first.crewDay().date(),
                crews,
                first.kind(),
                needed,
                available,
                reason,
                remedy + "borrow, hire or buy " + (needed - available) + " for crew "
                        + String.join(" and ", crews(shortOf)));
    }

    static Shortage stock(DayNeed need, double needed, double available, String unit, List<StoreItem> lots) {
        LocalDate date = need.crewDay().date();
        List<String> expired = lots.stream()
                .flatMap(lot -> ItemFitness.expiry(lot, date).stream())
                .map(Obstacle::found)
                .toList();
        String note = expired.isEmpty() ? "" : "; not counted: " + String.join("; ", expired);
        return new Shortage(
                date,
                List.of(need.crewDay().crew()),
                need.kind(),
                needed,
                available,
                number(available) + " " + unit + " left in date after the days before, " + number(needed) + " " + unit
                        + " needed" + note,
                "buy or borrow " + number(needed - available) + " " + unit + " before " + date);
    }

    static List<String> crews(List<DayNeed> needs) {
        return needs.stream()
                .map(need -> need.crewDay().crew())
                .distinct()
                .sorted()
                .toList();
    }

    /** At most three decimals, none where it is whole. */
    static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
