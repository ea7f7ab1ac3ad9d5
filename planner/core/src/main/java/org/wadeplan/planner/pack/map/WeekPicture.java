package org.wadeplan.planner.pack.map;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.wadeplan.planner.pack.map.Drawing.Anchor;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/**
 * The week as a picture: a lane for each crew-day, hours across, told apart by outline and hatching.
 *
 * <p>Hours count from midnight of the crew-day's date, so a night shift runs on to the right of 24.
 */
public final class WeekPicture {

    private static final double WIDTH_MM = 182;
    private static final double NAMES_MM = 27;
    private static final double HEAD_MM = 6;
    private static final double LANE_MM = 9.5;
    private static final double BAR_MM = 4;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);

    private final ZoneId zone;
    private final double firstH;
    private final double lastH;
    private final Drawing drawing;

    private WeekPicture(List<CrewDay> days, ZoneId zone) {
        this.zone = zone;
        this.firstH = Math.floor(
                days.stream().mapToDouble(day -> hours(day, day.start())).min().orElse(6));
        this.lastH = Math.ceil(
                days.stream().mapToDouble(day -> hours(day, day.end())).max().orElse(18));
        this.drawing = new Drawing(WIDTH_MM, HEAD_MM + LANE_MM * days.size() + 2);
    }

    public static Drawing of(List<CrewDay> days, ZoneId zone) {
        WeekPicture picture = new WeekPicture(days, zone);
        picture.hourLines();
        for (int lane = 0; lane < days.size(); lane++) {
            picture.lane(days.get(lane), HEAD_MM + LANE_MM * lane);
        }
        return picture.drawing;
    }

    private void hourLines() {
        double bottom = drawing.heightMm() - 1;
        for (int hour = (int) firstH; hour <= lastH; hour++) {
            boolean named = hour % 2 == 0;
            drawing.dashed(
                    List.of(new Coordinate(x(hour), HEAD_MM - 1), new Coordinate(x(hour), bottom)),
                    named ? 0.15 : 0.08,
                    "0.6 1.2");
            if (named) {
                drawing.label(x(hour), 2.5, 8.5, Anchor.CENTRED, String.format(Locale.ROOT, "%02d", hour % 24));
            }
        }
    }

    private void lane(CrewDay day, double top) {
        drawing.segment(0, top, WIDTH_MM, top, 0.15);
        drawing.boldLabel(0.5, top + LANE_MM / 2, 9.5, Anchor.RIGHT_OF, DAY.format(day.date()) + " · " + day.crew());
        double barTop = top + LANE_MM - BAR_MM - 0.6;
        for (Activity activity : day.activities()) {
            double left = x(hours(day, activity.start()));
            bar(activity, left, barTop, x(hours(day, activity.end())) - left);
        }
    }

    private void bar(Activity activity, double left, double top, double width) {
        ActivityKind kind = activity.kind();
        switch (kind) {
            case TRAVEL -> drawing.segment(left, top + BAR_MM / 2, left + width, top + BAR_MM / 2, 0.4);
            case WAIT ->
                drawing.dashed(
                        List.of(new Coordinate(left, top + BAR_MM / 2), new Coordinate(left + width, top + BAR_MM / 2)),
                        0.25,
                        "0.5 1");
            case VISIT -> {
                drawing.box(left, top, width, BAR_MM, 0.7);
                drawing.boldLabel(
                        left + width / 2,
                        top - 2,
                        8.5,
                        Anchor.CENTRED,
                        activity.site().orElse(""));
            }
            case DECON, RINSE -> drawing.hatch(left, top, width, BAR_MM, 1).box(left, top, width, BAR_MM, 0.3);
            default -> drawing.box(left, top + 1, width, BAR_MM - 2, 0.25);
        }
    }

    private double x(double hour) {
        return NAMES_MM + (hour - firstH) / (lastH - firstH) * (WIDTH_MM - NAMES_MM - 2);
    }

    /** Hours of the clock since midnight of the crew-day's date. */
    private double hours(CrewDay day, Instant at) {
        ZonedDateTime local = at.atZone(zone);
        return Duration.between(day.date().atStartOfDay(), local.toLocalDateTime())
                        .toMinutes()
                / 60.0;
    }
}
