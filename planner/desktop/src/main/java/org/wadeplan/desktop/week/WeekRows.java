package org.wadeplan.desktop.week;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Placement;

/** The table of the week: every bar of every crew, by day. */
final class WeekRows {

    private WeekRows() {}

    static List<WeekRow> of(RoundPlan plan, ZoneId zone) {
        return plan.week().crewDays().stream()
                .flatMap(day -> day.activities().stream().map(activity -> row(plan, day, activity, zone)))
                .toList();
    }

    private static WeekRow row(RoundPlan plan, CrewDay day, Activity activity, ZoneId zone) {
        Optional<Placement> placed = WeekBuilder.placement(plan, activity);
        return new WeekRow(
                BarId.of(day, activity),
                Times.day(day.date()),
                day.crew(),
                Times.clock(activity.start(), zone),
                Times.clock(activity.end(), zone),
                WeekBuilder.what(activity),
                activity.site().orElse(""),
                String.join(", ", activity.kitSets()),
                placed.map(at -> Times.minutes(at.slackMin())).orElse(""),
                placed.map(Placement::binding).orElse(""));
    }
}
