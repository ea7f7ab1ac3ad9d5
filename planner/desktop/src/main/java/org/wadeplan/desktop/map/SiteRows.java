package org.wadeplan.desktop.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Unplaced;

/** The table of sites, from what was read and planned. */
final class SiteRows {

    private static final String NONE = "-";

    private final Round round;
    private final Optional<RoundPlan> plan;

    private SiteRows(Round round, Optional<RoundPlan> plan) {
        this.round = round;
        this.plan = plan;
    }

    /** In the order of the site list. */
    static List<SiteRow> of(Round round, Optional<RoundPlan> plan) {
        SiteRows rows = new SiteRows(round, plan);
        return round.sites().stream().map(rows::row).toList();
    }

    private record State(Mark mark, String words) {}

    private SiteRow row(Site site) {
        Optional<MethodOutcome.Chosen> chosen =
                plan.flatMap(made -> made.decision(site.id())).flatMap(MethodDecision::chosen);
        List<CrewDay> days = daysOf(site.id());
        State state = state(site, chosen, days);
        return new SiteRow(
                site.id(),
                site.name(),
                site.stream(),
                chosen.map(choice -> label(choice.method())).orElse(NONE),
                plan.flatMap(made -> made.decision(site.id()))
                        .map(MethodWords::rule)
                        .orElse(NONE),
                joined(days.stream()
                        .map(day -> Times.day(day.date()))
                        .distinct()
                        .toList()),
                joined(days.stream().map(CrewDay::crew).distinct().toList()),
                state.mark(),
                state.words());
    }

    private String label(String method) {
        return round.method(method).map(Method::label).orElse(method);
    }

    private static String joined(List<String> parts) {
        return parts.isEmpty() ? NONE : String.join(", ", parts);
    }

    private List<CrewDay> daysOf(String site) {
        return plan.stream()
                .flatMap(made -> made.week().crewDays().stream())
                .filter(day -> day.visits().stream().anyMatch(visit -> isAt(visit, site)))
                .toList();
    }

    private static boolean isAt(Activity visit, String site) {
        return visit.site().filter(site::equals).isPresent();
    }

    private State state(Site site, Optional<MethodOutcome.Chosen> chosen, List<CrewDay> days) {
        if (plan.isEmpty()) {
            return new State(Mark.UNDECIDED, Words.of("state.noPlan"));
        }
        if (!days.isEmpty()) {
            return planned(site);
        }
        Optional<Unplaced> unplaced = plan.get().week().unplaced().stream()
                .filter(left -> left.site().equals(site.id()))
                .findFirst();
        if (unplaced.isPresent()) {
            return new State(Mark.NOT_PLANNED, Words.of("state.unplaced", reasons(unplaced.get())));
        }
        return chosen.isEmpty()
                ? new State(Mark.UNDECIDED, Words.of("state.noMethod"))
                : notVisited(site, chosen.get());
    }

    private State notVisited(Site site, MethodOutcome.Chosen chosen) {
        Optional<Method> method = round.method(chosen.method());
        if (method.filter(it -> it.kind() == MethodKind.NONE).isPresent()) {
            return new State(
                    Mark.NOT_PLANNED, Words.of("state.noVisit", method.get().label()));
        }
        return site.reserveFor()
                .map(other -> new State(Mark.RESERVE, Words.of("state.reserve", other)))
                .orElseGet(() -> new State(Mark.NOT_PLANNED, Words.of("state.notPlaced")));
    }

    private static String reasons(Unplaced unplaced) {
        return unplaced.reasons().stream().limit(1).collect(Collectors.joining("; "));
    }

    private State planned(Site site) {
        List<String> awaited = new ArrayList<>();
        plan.stream()
                .flatMap(made -> made.permissions().stream())
                .filter(permission -> permission.site().equals(site.id()))
                .forEach(permission -> awaited.addAll(permission.awaiting()));
        return awaited.isEmpty()
                ? new State(Mark.PLANNED, Words.of("state.planned"))
                : new State(Mark.AWAITING, Words.of("state.awaiting", awaited.get(0)));
    }
}
