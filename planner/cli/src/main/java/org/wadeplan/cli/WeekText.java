package org.wadeplan.cli;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Place;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.Unplaced;

/** The week as lines of text. */
final class WeekText {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private final Round round;
    private final RoundPlan plan;
    private final ZoneId zone;
    private final Optional<String> usualDrive;

    WeekText(Round round, RoundPlan plan) {
        this.round = round;
        this.plan = plan;
        this.zone = round.header().zone();
        this.usualDrive = usualDrive();
    }

    List<String> lines() {
        List<String> text = new ArrayList<>();
        text.add(round.header().title() + " · plan " + plan.version().label() + " · times in " + zone);
        usualDrive.ifPresent(source -> text.add("Drive times from: " + source + ", unless said otherwise."));
        text.addAll(TextTable.hanging("Methods: ", methodLegend()));
        for (CrewDay day : plan.week().crewDays()) {
            text.add("");
            text.add(DAY.format(day.date()) + " · crew " + day.crew() + " · "
                    + day.people().stream().map(this::name).collect(Collectors.joining(", ")) + " · " + day.vehicle());
            day.activities().forEach(activity -> text.add(line(activity)));
        }
        text.add("");
        addDecon(text, plan.week().decon());
        addPlacements(text, plan.week().placements());
        addUnplaced(text, plan.week().unplaced());
        text.addAll(plan.week().score());
        text.add("");
        return text;
    }

    private String line(Activity activity) {
        String kit = activity.kitSets().isEmpty() ? "" : " [" + String.join(" ", activity.kitSets()) + "]";
        return "  " + TIME.format(activity.start().atZone(zone)) + "-"
                + TIME.format(activity.end().atZone(zone)) + "  " + what(activity) + kit;
    }

    private String what(Activity activity) {
        String note = activity.note();
        return switch (activity.kind()) {
            case TRAVEL ->
                "drive to " + place(activity.place()) + noted(usualDrive.equals(Optional.of(note)) ? "" : note);
            case VISIT ->
                activity.place() + " "
                        + activity.part().map(part -> part.word()).orElse("") + " "
                        + activity.method().orElse("") + noted(note);
            case RINSE -> note.isBlank() ? "check and rinse" : note;
            case DECON -> "clean" + noted(note);
            case LOAD -> note.isBlank() ? "load" : note;
            case UNLOAD -> note.isBlank() ? "unload" : note;
            case WAIT -> note.isBlank() ? "wait" : note;
        };
    }

    private static String noted(String note) {
        return note.isBlank() ? "" : " (" + note + ")";
    }

    private String place(String id) {
        Place depot = round.header().depot();
        return depot.id().equals(id) ? depot.name() : id;
    }

    private String name(String person) {
        return round.person(person).map(Person::name).orElse(person);
    }

    /** Where most drive times of this week come from, so that it is said once. */
    private Optional<String> usualDrive() {
        Map<String, Long> counts = plan.week().crewDays().stream()
                .flatMap(day -> day.activities().stream())
                .filter(activity -> activity.kind() == ActivityKind.TRAVEL
                        && !activity.note().isBlank())
                .collect(Collectors.groupingBy(Activity::note, TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private String methodLegend() {
        return MethodLegend.of(
                round,
                plan.week().crewDays().stream()
                        .flatMap(day -> day.visits().stream())
                        .flatMap(visit -> visit.method().stream()));
    }

    private void addDecon(List<String> text, List<DeconTask> tasks) {
        if (tasks.isEmpty()) {
            return;
        }
        text.add("Decontamination");
        RemarkList reasons = new RemarkList();
        TextTable table = new TextTable("kit set", "crew", "from", "start", "people free", "released", "why");
        for (DeconTask task : tasks) {
            table.row(
                    task.kitSet(),
                    task.crew(),
                    String.join(" ", task.fromWaters()),
                    DAY_TIME.format(task.start().atZone(zone)),
                    DAY_TIME.format(task.crewFree().atZone(zone)),
                    DAY_TIME.format(task.released().atZone(zone)),
                    reasons.numberOf(task.reason()));
        }
        text.addAll(table.lines());
        text.addAll(reasons.lines());
        text.add("");
    }

    private static void addPlacements(List<String> text, List<Placement> placements) {
        text.add("How much each visit could slip");
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
            site.reasons().forEach(reason -> text.addAll(TextTable.hanging("  - ", reason)));
        }
        if (!unplaced.isEmpty()) {
            text.add("");
        }
    }
}
