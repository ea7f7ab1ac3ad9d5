package org.wadeplan.planner.pack.page;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.round.CheckInRules;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Travel;

/** The crew's day on one page: what when where, calls, conditions, batteries. */
record RunSheet(
        String heading,
        List<Fact> facts,
        List<String> warnings,
        List<Row> rows,
        List<Call> calls,
        String overdueRule,
        List<Terms> terms,
        List<Fact> batteries) {

    record Row(String start, String end, String minutes, String what, String where, String kitSets, String note) {}

    record Call(String site, String arrive, String leave, String checkInBy, String overdueAt) {}

    record Terms(String site, List<String> lines) {}

    boolean hasWarnings() {
        return !warnings.isEmpty();
    }

    boolean hasBatteries() {
        return !batteries.isEmpty();
    }

    static Section section(PlanSource source, CrewDay day, Templates templates) {
        boolean authorised = source.siteDays(day).stream().allMatch(visit -> visit.authorised(source));
        String subject = "crew " + day.crew() + " · " + source.clock().day(day.date());
        return new Section("Run sheet", subject, authorised, templates.fill("run-sheet", of(source, day)));
    }

    static RunSheet of(PlanSource source, CrewDay day) {
        PackClock clock = source.clock();
        return new RunSheet(
                "Crew " + day.crew() + ", " + clock.day(day.date()),
                facts(source, day),
                warnings(source, day),
                rows(source, day),
                source.siteDays(day).stream().map(visit -> call(source, visit)).toList(),
                overdueRule(source.round().header().checkIn()),
                source.siteDays(day).stream().map(visit -> terms(source, visit)).toList(),
                batteries(source, day));
    }

    private static List<Fact> facts(PlanSource source, CrewDay day) {
        PackClock clock = source.clock();
        return List.of(
                new Fact("People", String.join(", ", source.names(day.people()))),
                new Fact("Vehicle", day.vehicle()),
                new Fact(
                        "Shift",
                        clock.timeOn(day.date(), day.start()) + " to " + clock.timeOn(day.date(), day.end()) + ", "
                                + hours(Duration.between(day.start(), day.end()).toMinutes()) + ", times in "
                                + clock.zone()),
                new Fact("Times", "four visits in five end by the time under To"));
    }

    private static String hours(long minutes) {
        return minutes < 60
                ? minutes + " min"
                : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }

    private static List<String> warnings(PlanSource source, CrewDay day) {
        List<String> warnings = new ArrayList<>();
        for (SiteDay visit : source.siteDays(day)) {
            if (!visit.authorised(source)) {
                warnings.add("NOT AUTHORISED: " + visit.site().id() + ". " + awaiting(source, visit));
            }
        }
        List<String> shortOf = source.plan().kit().shortages().stream()
                .filter(shortage ->
                        shortage.date().equals(day.date()) && shortage.crews().contains(day.crew()))
                .map(Shortage::kind)
                .toList();
        if (!shortOf.isEmpty()) {
            warnings.add(
                    "Short of " + String.join(", ", shortOf) + ": the load list says why; settle it before leaving.");
        }
        return warnings;
    }

    static String awaiting(PlanSource source, SiteDay visit) {
        return source.permission(visit.site().id(), visit.date())
                .map(permission ->
                        String.join(" ", permission.awaiting()) + " " + String.join(" ", permission.blocks()))
                .orElse("Nobody has checked permits and consents for this visit.")
                .strip();
    }

    private static List<Row> rows(PlanSource source, CrewDay day) {
        Travel travel = new Travel(source.round());
        String from = source.round().header().depot().id();
        List<Row> rows = new ArrayList<>();
        for (Activity activity : day.activities()) {
            boolean estimated = activity.kind() == ActivityKind.TRAVEL
                    && travel.between(from, activity.place()).estimated();
            rows.add(row(source, day, activity, estimated ? "estimated from the map, not driven yet" : ""));
            from = activity.place();
        }
        return rows;
    }

    /** A visit says when it is usually over; other rows only what their own words do not say already. */
    private static Row row(PlanSource source, CrewDay day, Activity activity, String note) {
        LocalDate date = day.date();
        PackClock clock = source.clock();
        String half = activity.p50End()
                .map(end -> "usually done by " + clock.timeOn(date, end))
                .orElse("");
        return new Row(
                clock.timeOn(date, activity.start()),
                clock.timeOn(date, activity.end()),
                Integer.toString(activity.minutes()),
                what(source, activity),
                source.placeName(activity.place()),
                String.join(" ", activity.kitSets()),
                half + note);
    }

    private static String what(PlanSource source, Activity activity) {
        if (activity.kind() != ActivityKind.VISIT) {
            return switch (activity.kind()) {
                case LOAD -> "Load and check";
                case TRAVEL -> "Drive";
                case RINSE -> "Check and rinse";
                case DECON -> "Clean and treat";
                case WAIT -> "Wait";
                default -> "Unload";
            };
        }
        String part = activity.part().map(known -> ", " + known.word()).orElse("");
        return activity.method().map(source::methodLabel).orElse("Visit") + part;
    }

    private static Call call(PlanSource source, SiteDay visit) {
        PackClock clock = source.clock();
        LocalDate date = visit.date();
        return new Call(
                visit.site().id(),
                clock.timeOn(date, visit.first().start()),
                clock.timeOn(date, visit.end()),
                clock.timeOn(date, source.checkIn(visit).lastCallDue()),
                clock.timeOn(date, source.checkIn(visit).overdue()));
    }

    private static String overdueRule(CheckInRules rules) {
        return "Call the " + rules.contactRole() + " on arrival, at least every " + rules.everyMin()
                + " min on site, and on leaving. A crew counts as overdue " + rules.overdueAfterMin()
                + " min after a call was due.";
    }

    private static Terms terms(PlanSource source, SiteDay visit) {
        List<String> lines = new ArrayList<>();
        source.permission(visit.site().id(), visit.date())
                .ifPresent(permission -> lines.addAll(permissionLines(source, permission)));
        for (Activity activity : visit.visits()) {
            activity.part()
                    .flatMap(part -> source.placement(visit.site().id(), part))
                    .ifPresent(place -> lines.add(
                            "Window: " + place.binding() + "; could start " + hours(place.slackMin()) + " later."));
        }
        return new Terms(
                visit.site().id() + " " + visit.site().name(),
                lines.stream().map(Figures::ended).toList());
    }

    private static List<String> permissionLines(PlanSource source, Permission permission) {
        List<String> lines = new ArrayList<>(permission.conditions());
        permission
                .accessFrom()
                .ifPresent(
                        from -> lines.add("On the land from " + source.clock().time(from) + "."));
        permission
                .accessUntil()
                .ifPresent(
                        until -> lines.add("Off the land by " + source.clock().time(until) + "."));
        return lines;
    }

    private static List<Fact> batteries(PlanSource source, CrewDay day) {
        return source.siteDays(day).stream()
                .flatMap(visit -> source.plan().effort(visit.site().id()).stream())
                .flatMap(effort -> effort.batteries().stream()
                        .map(need -> new Fact(effort.site(), need.packs() + " packs charged. " + need.explanation())))
                .toList();
    }
}
