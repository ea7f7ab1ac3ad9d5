package org.wadeplan.desktop.cleaning;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * All kit sets along the week.
 *
 * @param from left end, a midnight
 * @param to right end, a midnight
 * @param nights dark stretches, to lie behind
 * @param benches shared baths and bays; a line for each place in them
 */
public record CleaningPicture(
        Instant from, Instant to, ZoneId zone, List<Night> nights, List<SetLane> lanes, List<BenchLane> benches) {

    /** Between dark and first light. */
    public record Night(Instant from, Instant to) {}

    /** Minutes from the left end, inside the picture. */
    double minutes(Instant at) {
        Instant inside = at.isBefore(from) ? from : at.isAfter(to) ? to : at;
        return Duration.between(from, inside).toSeconds() / 60.0;
    }

    double wholeMin() {
        return minutes(to);
    }

    List<LocalDate> dates() {
        return LocalDate.ofInstant(from, zone)
                .datesUntil(LocalDate.ofInstant(to, zone))
                .toList();
    }

    Optional<SetSpan> span(String id) {
        return lanes.stream()
                .flatMap(lane -> lane.spans().stream())
                .filter(span -> span.id().equals(id))
                .findFirst();
    }

    /** A step through the spans with the arrow keys. */
    enum Step {
        LEFT,
        RIGHT,
        UP,
        DOWN
    }

    /** The span one step from a span; the first where none is given; the same where there is no further one. */
    Optional<SetSpan> from(Optional<String> id, Instant moment, Step step) {
        for (int row = 0; row < lanes.size(); row++) {
            List<SetSpan> spans = lanes.get(row).spans();
            for (int at = 0; at < spans.size(); at++) {
                if (id.filter(spans.get(at).id()::equals).isPresent()) {
                    return Optional.of(next(row, at, moment, step));
                }
            }
        }
        return lanes.stream().findFirst().flatMap(lane -> lane.at(moment)
                .or(() -> lane.spans().stream().findFirst()));
    }

    private SetSpan next(int row, int at, Instant moment, Step step) {
        List<SetSpan> spans = lanes.get(row).spans();
        return switch (step) {
            case LEFT -> spans.get(Math.max(0, at - 1));
            case RIGHT -> spans.get(Math.min(spans.size() - 1, at + 1));
            case UP -> across(row - 1, moment).orElse(spans.get(at));
            case DOWN -> across(row + 1, moment).orElse(spans.get(at));
        };
    }

    private Optional<SetSpan> across(int row, Instant moment) {
        return row < 0 || row >= lanes.size()
                ? Optional.empty()
                : lanes.get(row).at(moment);
    }
}
