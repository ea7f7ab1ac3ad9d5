package org.wadeplan.planner.effort;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wadeplan.planner.effort.Compared.Likeness;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/**
 * Whether a repeat visit can be compared with the last one: same reach, method, settings, effort and season (common
 * practice; David and Hamer 2010). The limits of sameness are ours.
 *
 * @param last the visit compared with; empty where there is none
 * @param rows each with both values; empty without an earlier visit
 * @param sentence for one line on paper
 */
public record Comparability(Optional<LocalDate> last, List<Compared> rows, String sentence) {

    private static final double LIKE_EFFORT_SHARE = 0.2;
    private static final long LIKE_DAYS = 14;
    private static final long DAYS_IN_A_YEAR = 365;

    /** Before a visit on that date by that method. */
    public static Comparability of(
            Round round, Site site, String method, LocalDate date, Optional<VisitEffort> effort) {
        Optional<PastVisit> last = lastVisit(round, site.id(), method);
        if (last.isEmpty()) {
            return new Comparability(
                    Optional.empty(), List.of(), "No history: this visit cannot be compared with an earlier one yet.");
        }
        PastVisit past = last.get();
        List<Compared> rows = new ArrayList<>();
        rows.add(reach(round, site, past));
        rows.add(method(round, past, method));
        if (kind(round, method).equals(Optional.of(MethodKind.ELECTROFISHING))) {
            rows.add(settings(past, effort));
            rows.add(shock(past, effort));
        } else {
            rows.add(minutes(past, effort));
        }
        rows.add(season(past, date));
        return new Comparability(Optional.of(past.date()), List.copyOf(rows), sentence(past.date(), rows));
    }

    /** The latest earlier visit, one by the same method before one of its kind before any other. */
    private static Optional<PastVisit> lastVisit(Round round, String site, String method) {
        Optional<MethodKind> kind = kind(round, method);
        return round.pastVisits().stream()
                .filter(visit -> visit.site().equals(site))
                .max(Comparator.comparing(
                                (PastVisit visit) -> kind(round, visit.method()).equals(kind))
                        .thenComparing(PastVisit::date)
                        .thenComparing(visit -> visit.method().equals(method)));
    }

    private static Optional<MethodKind> kind(Round round, String method) {
        return round.method(method).map(Method::kind);
    }

    private static Compared reach(Round round, Site site, PastVisit past) {
        String today = point(site.start().eastM(), site.start().northM());
        if (past.start().isEmpty()) {
            return new Compared("reach", Compared.UNKNOWN, today, Likeness.NOT_KNOWN, "start not recorded then");
        }
        double offM = Math.hypot(
                past.start().get().eastM() - site.start().eastM(),
                past.start().get().northM() - site.start().northM());
        boolean same = offM <= round.header().reach().driftLimitM();
        return new Compared(
                "reach",
                point(past.start().get().eastM(), past.start().get().northM()),
                today,
                same ? Likeness.SAME : Likeness.DIFFERS,
                "starts " + Plain.number(offM, 0) + " m apart");
    }

    private static String point(double eastM, double northM) {
        return "start E " + Plain.number(eastM, 0) + " N " + Plain.number(northM, 0);
    }

    private static Compared method(Round round, PastVisit past, String method) {
        boolean same = past.method().equals(method);
        boolean sameKind = kind(round, past.method()).equals(kind(round, method));
        return new Compared(
                "method",
                past.method(),
                method,
                same ? Likeness.SAME : Likeness.DIFFERS,
                same ? "" : sameKind ? "same kind of method" : "catches do not compare at all");
    }

    private static Compared settings(PastVisit past, Optional<VisitEffort> effort) {
        Optional<ElectricSettings> planned =
                effort.flatMap(VisitEffort::settings).map(StartSettings::last);
        String today = planned.map(Comparability::keep).orElse(Compared.UNKNOWN);
        if (past.settings().isEmpty() || planned.isEmpty()) {
            return new Compared(
                    "settings",
                    past.settings().map(Comparability::words).orElse(Compared.UNKNOWN),
                    today,
                    Likeness.NOT_KNOWN,
                    "");
        }
        ElectricSettings last = past.settings().get();
        boolean same = last.frequencyHz() == planned.get().frequencyHz()
                && last.dutyPct() == planned.get().dutyPct();
        return new Compared("settings", words(last), today, same ? Likeness.SAME : Likeness.DIFFERS, "");
    }

    private static String words(ElectricSettings settings) {
        return Plain.number(settings.frequencyHz(), 1) + " Hz, " + Plain.number(settings.pulseWidthMs(), 2) + " ms, "
                + Plain.number(settings.dutyPct(), 1) + " % duty";
    }

    private static String keep(ElectricSettings settings) {
        return "keep " + words(settings);
    }

    private static Compared shock(PastVisit past, Optional<VisitEffort> effort) {
        Optional<ShockTime> planned = effort.flatMap(VisitEffort::shock);
        String last = past.shockS().isPresent() ? past.shockS().getAsInt() + " s of button time" : Compared.UNKNOWN;
        String today = planned.map(time -> "about " + time.p50S() + " s").orElse(Compared.UNKNOWN);
        if (past.shockS().isEmpty() || planned.isEmpty()) {
            return new Compared("effort", last, today, Likeness.NOT_KNOWN, "");
        }
        return new Compared(
                "effort",
                last,
                today,
                like(past.shockS().getAsInt(), planned.get().p50S()),
                crew(past));
    }

    private static Compared minutes(PastVisit past, Optional<VisitEffort> effort) {
        Optional<PartEffort> planned = effort.flatMap(visit -> visit.part(past.part()));
        String last = past.onSiteMin().isPresent() ? past.onSiteMin().getAsInt() + " min on site" : Compared.UNKNOWN;
        String today = planned.map(part -> "about " + part.p50Min() + " min").orElse(Compared.UNKNOWN);
        if (past.onSiteMin().isEmpty() || planned.isEmpty()) {
            return new Compared("effort", last, today, Likeness.NOT_KNOWN, "");
        }
        return new Compared(
                "effort",
                last,
                today,
                like(past.onSiteMin().getAsInt(), planned.get().p50Min()),
                crew(past));
    }

    private static Likeness like(double last, double today) {
        return Math.abs(today - last) <= LIKE_EFFORT_SHARE * last ? Likeness.SAME : Likeness.DIFFERS;
    }

    private static String crew(PastVisit past) {
        return past.crewSize().isPresent() ? "crew of " + past.crewSize().getAsInt() + " then" : "crew not known";
    }

    private static Compared season(PastVisit past, LocalDate date) {
        long apart = Math.abs(past.date().withYear(date.getYear()).toEpochDay() - date.toEpochDay());
        long days = Math.min(apart, DAYS_IN_A_YEAR - Math.min(apart, DAYS_IN_A_YEAR));
        return new Compared(
                "season",
                past.date().toString(),
                date.toString(),
                days <= LIKE_DAYS ? Likeness.SAME : Likeness.DIFFERS,
                days + (days == 1 ? " day" : " days") + " apart in the year");
    }

    private static String sentence(LocalDate last, List<Compared> rows) {
        String same = named(rows, Likeness.SAME, Compared::what);
        String differs = named(
                rows, Likeness.DIFFERS, row -> row.what() + " (" + row.last() + " then, " + row.today() + " today)");
        String unknown = named(rows, Likeness.NOT_KNOWN, Compared::what);
        return (differs.isEmpty() ? "Compares with " : "Compares only in part with ") + last + ":"
                + (same.isEmpty() ? "" : " same " + same + ".")
                + (differs.isEmpty() ? "" : " Differs: " + differs + ".")
                + (unknown.isEmpty() ? "" : " Not known: " + unknown + ".")
                + " Write down what turns out otherwise.";
    }

    private static String named(List<Compared> rows, Likeness likeness, Function<Compared, String> words) {
        return rows.stream()
                .filter(row -> row.likeness() == likeness)
                .map(words)
                .collect(Collectors.joining(", "));
    }
}
