package org.wadeplan.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Unplaced;

/** What a person should read before using a plan. */
final class PlanFindings {

    private static final int REASONS_SHOWN = 3;

    private PlanFindings() {}

    static List<Problem> of(PlanDraft draft) {
        List<Problem> findings = new ArrayList<>(MethodFindings.of(draft.round(), draft.decisions()));
        findings.addAll(EffortPlanner.findings(draft.round(), draft.decisions()));
        missing(draft)
                .forEach(site -> findings.add(Problem.error(
                        "visit-not-placed",
                        SourcePlace.part("plan.json", site.site()),
                        site.site() + " (" + site.method() + ") has no place in this week: " + reasons(site),
                        "a day, a crew and a window for every site of the list",
                        "change what the reasons name, use a reserve day, or take the site off the list")));
        draft.permissions().stream()
                .filter(permission -> !permission.authorised())
                .forEach(permission -> findings.add(notAuthorised(permission)));
        draft.briefings().forEach(briefing -> findings.addAll(breaches(briefing)));
        findings.addAll(thunder(draft));
        findings.addAll(vehiclesWithoutCertificate(draft));
        draft.kit().shortages().forEach(shortage -> findings.add(shortage(shortage)));
        draft.kit().vehicles().forEach(shortage -> findings.add(shortage(shortage)));
        draft.week()
                .estimatedLegs()
                .forEach(leg -> findings.add(Problem.note(
                        "drive-estimated",
                        SourcePlace.file("travel.csv"),
                        leg,
                        "a row for every drive",
                        "add the row with the minutes that it takes")));
        return findings;
    }

    /** Sites that should be visited and are not: those that a reserve stands in for do not count. */
    static List<Unplaced> missing(PlanDraft draft) {
        Set<String> placed = draft.week().crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .flatMap(visit -> visit.site().stream())
                .collect(Collectors.toSet());
        Set<String> stoodInFor = draft.round().sites().stream()
                .filter(site -> placed.contains(site.id()))
                .flatMap(site -> site.reserveFor().stream())
                .collect(Collectors.toSet());
        return draft.week().unplaced().stream()
                .filter(site -> !stoodInFor.contains(site.site()))
                .filter(site -> draft.round()
                        .site(site.site())
                        .flatMap(Site::reserveFor)
                        .isEmpty())
                .toList();
    }

    /** The first reasons; the week itself holds all of them. */
    private static String reasons(Unplaced site) {
        List<String> all = site.reasons();
        String first = all.stream()
                .limit(REASONS_SHOWN)
                .map(reason -> reason.endsWith(".") ? reason.substring(0, reason.length() - 1) : reason)
                .collect(Collectors.joining("; "));
        return all.size() > REASONS_SHOWN ? first + "; and " + (all.size() - REASONS_SHOWN) + " more reasons" : first;
    }

    private static Problem notAuthorised(Permission permission) {
        List<String> reasons = new ArrayList<>(permission.blocks());
        reasons.addAll(permission.awaiting());
        return Problem.error(
                "not-authorised",
                SourcePlace.part("permits.csv", permission.site()),
                permission.site() + " on " + permission.date() + ": " + String.join(" ", reasons),
                "a granted permit and a consent for the day",
                "get it in writing before that day, or take the visit off; its pages say NOT AUTHORISED until then");
    }

    /** What a plan already breaches on paper: a person decides, with what they see at the water. */
    private static List<Problem> breaches(VisitBriefing visit) {
        return visit.briefing().stops().stream()
                .filter(stop -> stop.limit().breached())
                .map(
                        stop -> Problem.warning(
                                "stop-limit",
                                SourcePlace.part("sites.csv", visit.site()),
                                visit.site() + " " + visit.part().word() + " on " + visit.date() + ": "
                                        + stop.limit().what() + " " + stop.detail(),
                                "values within every stop limit",
                                "keep people out of that part, change the method or the day; the briefing says STOP until then"))
                .toList();
    }

    private static List<Problem> thunder(PlanDraft draft) {
        return draft.week().crewDays().stream()
                .filter(day -> !day.visits().isEmpty())
                .filter(day -> draft.round().forecast().stream()
                        .anyMatch(forecast -> forecast.date().equals(day.date())
                                && forecast.thunder().orElse(false)))
                .map(day -> Problem.warning(
                        "thunder-forecast",
                        SourcePlace.part("forecast.csv", day.date().toString()),
                        "thunder is forecast on a day when crew " + day.crew() + " works in water",
                        "no thunder while anyone is at the water",
                        "look at the newest forecast, move the day, and stop at the first thunder"))
                .toList();
    }

    private static List<Problem> vehiclesWithoutCertificate(PlanDraft draft) {
        return draft.week().crewDays().stream()
                .map(CrewDay::vehicle)
                .distinct()
                .filter(vehicle -> draft.round().store().items().stream()
                        .anyMatch(item ->
                                item.id().equals(vehicle) && item.certificates().isEmpty()))
                .map(vehicle -> Problem.warning(
                        "vehicle-without-certificate",
                        SourcePlace.part("certificates.csv", vehicle),
                        vehicle + " drives in this plan and has no inspection on record",
                        "an inspection that counts on every day it drives",
                        "look it up and add the row, or take another vehicle"))
                .toList();
    }

    private static Problem shortage(Shortage shortage) {
        return Problem.error(
                "kit-short",
                SourcePlace.part("store.csv", shortage.kind()),
                shortage.date() + ", crew " + String.join(" and ", shortage.crews()) + ": " + shortage.reason(),
                "enough in service, valid and clean on the day",
                shortage.remedy());
    }
}
