package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** A round and a plan, with the few look-ups that the rules share. */
record PlanFacts(Round round, RoundPlan plan) {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    /** Sun times of two formulas may differ by this much, minutes. */
    static final int SUN_TOLERANCE_MIN = 2;

    /** A visit as it stands in the plan, with the site and the method's part where the round knows them. */
    record Visit(CrewDay day, Activity activity, Optional<Site> site, Optional<MethodPart> part) {

        String name() {
            return activity.site().orElse("?") + " "
                    + activity.part().map(part -> part.word()).orElse("?");
        }

        /** The stretch in the water in the middle of the part; the whole part where the method names no such minutes. */
        Instant wetStart() {
            return activity.start().plus(dryMin() / 2, ChronoUnit.MINUTES);
        }

        Instant wetEnd() {
            int dryMin = dryMin();
            return activity.end().minus(dryMin - dryMin / 2, ChronoUnit.MINUTES);
        }

        private int dryMin() {
            int wetMin = part.map(MethodPart::inWaterMin).orElse(0);
            return wetMin == 0 ? 0 : Math.max(0, activity.minutes() - wetMin);
        }
    }

    WeekPlan week() {
        return plan.week();
    }

    ZoneId zone() {
        return round.header().zone();
    }

    List<Visit> visits() {
        List<Visit> visits = new ArrayList<>();
        for (CrewDay day : week().crewDays()) {
            for (Activity activity : day.activities()) {
                if (activity.kind() == ActivityKind.VISIT) {
                    visits.add(new Visit(day, activity, activity.site().flatMap(round::site), part(activity)));
                }
            }
        }
        return visits;
    }

    private Optional<MethodPart> part(Activity activity) {
        return activity.method().flatMap(round::method).flatMap(method -> method.parts().stream()
                .filter(part -> activity.part().filter(part.part()::equals).isPresent())
                .findFirst());
    }

    Optional<Water> water(Visit visit) {
        return visit.site().flatMap(round::waterOf);
    }

    List<Person> people(CrewDay day) {
        return day.people().stream()
                .map(round::person)
                .flatMap(Optional::stream)
                .toList();
    }

    Optional<MetricPoint> where(String place) {
        return round.header().depot().id().equals(place)
                ? Optional.of(round.header().depot().at())
                : round.site(place).map(Site::start);
    }

    LonLat lonLat(MetricPoint at) {
        return round.terrain().crs().toLonLat(at);
    }

    Instant at(LocalDate date, LocalTime time) {
        return date.atTime(time).atZone(zone()).toInstant();
    }

    String clock(Instant time) {
        return CLOCK.format(time.atZone(zone()));
    }

    static int minutes(Instant from, Instant until) {
        return Math.toIntExact(ChronoUnit.MINUTES.between(from, until));
    }

    static Problem broken(String code, CrewDay day, String found, String expected) {
        return broken(code, "crew " + day.crew() + " " + day.date(), found, expected);
    }

    static Problem broken(String code, String row, String found, String expected) {
        return Problem.error(
                "week-" + code,
                SourcePlace.part("plan.json", row),
                found,
                expected,
                "plan the week again, or change it");
    }

    static Problem doubtful(String code, String row, String found, String expected) {
        return Problem.warning(
                "week-" + code,
                SourcePlace.part("plan.json", row),
                found,
                expected,
                "settle it before the day, or move the visit");
    }
}
