package org.wadeplan.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.Unplaced;

/** The week as lines of text. */
final class WeekText {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private WeekText() {}

    static List<String> lines(Round round, RoundPlan plan) {
        ZoneId zone = round.header().zone();
        List<String> text = new ArrayList<>();
        text.add(round.header().title() + " · plan " + plan.version().label() + " · times in " + zone);
        for (CrewDay day : plan.week().crewDays()) {
            text.add("");
            text.add(DAY.format(day.date()) + " · crew " + day.crew() + " · " + String.join(", ", day.people()) + " · "
                    + day.vehicle());
            day.activities().forEach(activity -> text.add(line(activity, zone)));
        }
        text.add("");
        addDecon(text, plan.week().decon(), zone);
        addPlacements(text, plan.week().placements());
        addUnplaced(text, plan.week().unplaced());
        text.addAll(plan.week().score());
        return text;
    }

    private static String line(Activity activity, ZoneId zone) {
        String what =
                switch (activity.kind()) {
                    case TRAVEL -> "drive to " + activity.place();
                    case VISIT ->
                        activity.place() + " "
                                + activity.part().map(part -> part.word()).orElse("") + " "
                                + activity.method().orElse("");
                    case RINSE -> "check and rinse";
                    case DECON -> "clean " + String.join(" ", activity.kitSets());
                    case LOAD -> "load";
                    case UNLOAD -> "unload";
                    case WAIT -> "wait";
                };
        String kit = activity.kitSets().isEmpty() ? "" : " [" + String.join(" ", activity.kitSets()) + "]";
        String note = activity.note().isBlank() ? "" : " · " + activity.note();
        return "  " + time(activity.start(), zone) + "-" + time(activity.end(), zone) + "  " + what + kit + note;
    }

    private static void addDecon(List<String> text, List<DeconTask> tasks, ZoneId zone) {
        if (tasks.isEmpty()) {
            return;
        }
        text.add("Decontamination");
        TextTable table = new TextTable("kit set", "crew", "from", "start", "people free", "released", "why");
        for (DeconTask task : tasks) {
            table.row(
                    task.kitSet(),
                    task.crew(),
                    String.join(" ", task.fromWaters()),
                    DAY_TIME.format(task.start().atZone(zone)),
                    DAY_TIME.format(task.crewFree().atZone(zone)),
                    DAY_TIME.format(task.released().atZone(zone)),
                    task.reason());
        }
        text.addAll(table.lines());
        text.add("");
    }

    private static void addPlacements(List<String> text, List<Placement> placements) {
        TextTable table = new TextTable("site", "part", "slack_min", "bound by");
        for (Placement placement : placements) {
            table.row(
                    placement.site(),
                    placement.part().word(),
                    Integer.toString(placement.slackMin()),
                    placement.binding());
        }
        text.addAll(table.lines());
        text.add("");
    }

    private static void addUnplaced(List<String> text, List<Unplaced> unplaced) {
        for (Unplaced site : unplaced) {
            text.add("Not visited: " + site.site() + " (" + site.method() + ")");
            site.reasons().forEach(reason -> text.add("  - " + reason));
        }
        if (!unplaced.isEmpty()) {
            text.add("");
        }
    }

    private static String time(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }
}
