package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The numbers that a cell allows, exactly: intervals in rising order that neither overlap nor touch. Two sets that hold
 * the same numbers are equal records.
 *
 * @param intervals rising, apart from one another; none for the set that holds nothing
 */
public record NumberSet(List<Interval> intervals) {

    public NumberSet {
        intervals = joined(intervals);
    }

    public static NumberSet of(Interval... intervals) {
        return new NumberSet(List.of(intervals));
    }

    public static NumberSet everything() {
        return of(Interval.everything());
    }

    public boolean isEmpty() {
        return intervals.isEmpty();
    }

    public boolean isEverything() {
        return equals(everything());
    }

    public boolean contains(BigDecimal value) {
        return intervals.stream().anyMatch(interval -> interval.contains(value));
    }

    public NumberSet union(NumberSet other) {
        return new NumberSet(
                Stream.concat(intervals.stream(), other.intervals.stream()).toList());
    }

    public NumberSet intersect(NumberSet other) {
        return new NumberSet(intervals.stream()
                .flatMap(mine -> other.intervals.stream().flatMap(theirs -> mine.intersect(theirs).stream()))
                .toList());
    }

    /** Every number that is not in this set. */
    public NumberSet complement() {
        List<Interval> gaps = new ArrayList<>();
        Optional<BigDecimal> from = Optional.empty();
        boolean fromIncluded = false;
        for (Interval interval : intervals) {
            Optional<BigDecimal> until = interval.low();
            if (until.isPresent() && !Interval.isEmpty(from, fromIncluded, until, !interval.lowIncluded())) {
                gaps.add(new Interval(from, fromIncluded, until, !interval.lowIncluded()));
            }
            if (interval.high().isEmpty()) {
                return new NumberSet(gaps);
            }
            from = interval.high();
            fromIncluded = !interval.highIncluded();
        }
        gaps.add(new Interval(from, fromIncluded, Optional.empty(), false));
        return new NumberSet(gaps);
    }

    /** Every end of every interval, rising, each once. */
    public List<BigDecimal> ends() {
        return intervals.stream()
                .flatMap(interval -> Stream.concat(interval.low().stream(), interval.high().stream()))
                .distinct()
                .toList();
    }

    private static List<Interval> joined(List<Interval> parts) {
        List<Interval> joined = new ArrayList<>();
        for (Interval next : parts.stream().sorted(Interval.BY_LOW).toList()) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).runsInto(next)) {
                joined.set(last, joined.get(last).until(next));
            } else {
                joined.add(next);
            }
        }
        return List.copyOf(joined);
    }
}
