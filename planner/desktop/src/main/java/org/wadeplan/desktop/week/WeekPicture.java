package org.wadeplan.desktop.week;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The whole timeline.
 *
 * @param fromMin left end of every day, minutes from midnight
 * @param toMin right end of every day, minutes from midnight; above 1440 where somebody works past midnight
 */
public record WeekPicture(int fromMin, int toMin, List<DayBand> days) {

    /** Bars of the crews alone. */
    public long crewBars() {
        return lanes().stream()
                .filter(lane -> !lane.kit())
                .mapToLong(lane -> lane.bars().size())
                .sum();
    }

    List<Lane> lanes() {
        return days.stream().flatMap(day -> day.lanes().stream()).toList();
    }

    Optional<WeekBar> bar(String id) {
        return lanes().stream()
                .flatMap(lane -> lane.bars().stream())
                .filter(bar -> bar.id().equals(id))
                .findFirst();
    }

    /** A step through the bars with the arrow keys. */
    enum Step {
        LEFT,
        RIGHT,
        UP,
        DOWN
    }

    /** The bar one step from a bar; the first of all where none is given; the same where there is no further one. */
    Optional<WeekBar> from(Optional<String> id, Step step) {
        List<Lane> filled =
                lanes().stream().filter(lane -> !lane.bars().isEmpty()).toList();
        for (int row = 0; row < filled.size(); row++) {
            List<WeekBar> bars = filled.get(row).bars();
            for (int at = 0; at < bars.size(); at++) {
                if (id.filter(bars.get(at).id()::equals).isPresent()) {
                    return Optional.of(next(filled, row, at, step));
                }
            }
        }
        return filled.stream().findFirst().map(lane -> lane.bars().get(0));
    }

    private static WeekBar next(List<Lane> filled, int row, int at, Step step) {
        WeekBar bar = filled.get(row).bars().get(at);
        return switch (step) {
            case LEFT -> filled.get(row).bars().get(Math.max(0, at - 1));
            case RIGHT ->
                filled.get(row).bars().get(Math.min(filled.get(row).bars().size() - 1, at + 1));
            case UP -> across(filled, row, -1, bar);
            case DOWN -> across(filled, row, 1, bar);
        };
    }

    private static WeekBar across(List<Lane> filled, int row, int by, WeekBar bar) {
        int middle = bar.fromMin() + bar.toMin();
        int other = row + by;
        return other < 0 || other >= filled.size()
                ? bar
                : filled.get(other).bars().stream()
                        .min(Comparator.comparingInt(near -> Math.abs(near.fromMin() + near.toMin() - middle)))
                        .orElse(bar);
    }
}
