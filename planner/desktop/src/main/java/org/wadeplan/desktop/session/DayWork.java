package org.wadeplan.desktop.session;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.planner.round.LoadTick;

/**
 * What people did and saw on the day: ticks of load lists, and a pest that somebody saw.
 *
 * @param ticks in the order in which they were made
 * @param find what came of tracing the last pest that was entered
 */
public record DayWork(List<LoadTick> ticks, Optional<FindReport> find) {

    public static final DayWork NOTHING = new DayWork(List.of(), Optional.empty());

    public DayWork {
        ticks = List.copyOf(ticks);
    }

    public Optional<LoadTick> tick(LocalDate date, String crew, String item) {
        return ticks.stream().filter(tick -> same(tick, date, crew, item)).findFirst();
    }

    /** With one more tick, which replaces an earlier one of the same item on the same crew-day. */
    public DayWork with(LoadTick tick) {
        DayWork rest = without(tick.date(), tick.crew(), tick.item());
        return new DayWork(Stream.concat(rest.ticks.stream(), Stream.of(tick)).toList(), find);
    }

    public DayWork without(LocalDate date, String crew, String item) {
        return new DayWork(
                ticks.stream().filter(tick -> !same(tick, date, crew, item)).toList(), find);
    }

    public DayWork with(FindReport report) {
        return new DayWork(ticks, Optional.of(report));
    }

    private static boolean same(LoadTick tick, LocalDate date, String crew, String item) {
        return tick.date().equals(date)
                && tick.crew().equals(crew)
                && tick.item().equals(item);
    }
}
