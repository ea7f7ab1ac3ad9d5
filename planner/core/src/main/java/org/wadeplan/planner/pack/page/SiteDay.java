package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/**
 * What one crew does at one site on one day: one part, or two such as marking by daylight and coming back after dark.
 *
 * @param visits its activities there, in order, never empty
 */
record SiteDay(CrewDay day, Site site, List<Activity> visits) {

    LocalDate date() {
        return day.date();
    }

    Activity first() {
        return visits.get(0);
    }

    Instant end() {
        return visits.get(visits.size() - 1).end();
    }

    String method() {
        return first().method().orElse("not stated");
    }

    MethodKind kind(PlanSource source) {
        return source.round().method(method()).map(Method::kind).orElse(MethodKind.NONE);
    }

    boolean has(VisitPart part) {
        return visits.stream()
                .anyMatch(visit -> visit.part().filter(part::equals).isPresent());
    }

    /** {@code set}, or {@code mark and night}. */
    String parts() {
        return visits.stream()
                .flatMap(visit -> visit.part().stream())
                .map(VisitPart::word)
                .collect(Collectors.joining(" and "));
    }

    /** {@code BRN-01 Ford, Mon 6 Sep 2027, crew A} */
    String subject(PlanSource source) {
        return site.id() + " · " + source.clock().day(date()) + " · crew " + day.crew();
    }

    boolean authorised(PlanSource source) {
        return source.permission(site.id(), date())
                .map(permission -> permission.authorised())
                .orElse(false);
    }
}
