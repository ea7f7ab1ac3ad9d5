package org.wadeplan.planner.pack.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.hazard.CheckInTimes;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;

/** A round with its plan, and the questions that pages ask of the two together. */
record PlanSource(Round round, RoundPlan plan, PackClock clock) {

    /** Visits of one site on one crew-day, in order of the first. */
    List<SiteDay> siteDays(CrewDay day) {
        Map<String, List<Activity>> bySite = new LinkedHashMap<>();
        for (Activity visit : day.visits()) {
            visit.site().ifPresent(site -> bySite.computeIfAbsent(site, any -> new ArrayList<>())
                    .add(visit));
        }
        return bySite.entrySet().stream()
                .flatMap(entry -> round.site(entry.getKey()).stream()
                        .map(site -> new SiteDay(day, site, List.copyOf(entry.getValue()))))
                .toList();
    }

    /**
     * Every cleaning that a crew starts from a day of its own until its next one. So a cleaning is in exactly one crew's
     * papers.
     */
    List<DeconTask> decon(CrewDay day) {
        return plan.week().decon().stream()
                .filter(task -> dayOf(task).filter(day::equals).isPresent())
                .toList();
    }

    private Optional<CrewDay> dayOf(DeconTask task) {
        List<CrewDay> own = plan.week().crewDays().stream()
                .filter(day -> day.crew().equals(task.crew()))
                .toList();
        return own.stream()
                .filter(day -> !day.start().isAfter(task.start()))
                .max(Comparator.comparing(CrewDay::start))
                .or(() -> own.stream().findFirst());
    }

    Optional<Permission> permission(String site, LocalDate date) {
        return plan.permissions().stream()
                .filter(permission ->
                        permission.site().equals(site) && permission.date().equals(date))
                .findFirst();
    }

    Optional<Placement> placement(String site, VisitPart part) {
        return plan.week().placements().stream()
                .filter(placement -> placement.site().equals(site) && placement.part() == part)
                .findFirst();
    }

    Optional<CrewDayLoad> load(CrewDay day) {
        return plan.kit().loads().stream()
                .filter(load -> load.crew().equals(day.crew()) && load.date().equals(day.date()))
                .findFirst();
    }

    /** The latest earlier visit, one by the same method before any other. */
    Optional<PastVisit> lastVisit(String site, String method) {
        return round.pastVisits().stream()
                .filter(visit -> visit.site().equals(site))
                .max(Comparator.comparing((PastVisit visit) -> visit.method().equals(method))
                        .thenComparing(PastVisit::date));
    }

    /** How many sub-reaches the site's reach has; 0 where none could be laid. */
    int subReaches(String site) {
        return plan.reach(site).map(reach -> reach.subReaches().size()).orElse(0);
    }

    String methodLabel(String method) {
        return round.method(method).map(Method::label).orElse(method);
    }

    /** First names as the crew knows them. */
    List<String> names(List<String> people) {
        return people.stream()
                .map(id -> round.person(id).map(Person::name).orElse(id))
                .toList();
    }

    String placeName(String place) {
        return place.equals(round.header().depot().id())
                ? round.header().depot().name()
                : place;
    }

    CheckInTimes checkIn(SiteDay visit) {
        return CheckInTimes.after(visit.end(), round.header().checkIn());
    }

    /** The briefings for the parts of a visit, in the order of the parts. */
    List<VisitBriefing> briefings(SiteDay visit) {
        return visit.visits().stream()
                .flatMap(activity -> activity.part().stream())
                .flatMap(part -> plan.briefings().stream()
                        .filter(briefing -> briefing.site().equals(visit.site().id())
                                && briefing.date().equals(visit.date())
                                && briefing.crew().equals(visit.day().crew())
                                && briefing.part() == part))
                .toList();
    }
}
