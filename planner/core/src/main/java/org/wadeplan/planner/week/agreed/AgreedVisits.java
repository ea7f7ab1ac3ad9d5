package org.wadeplan.planner.week.agreed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.WeekInputs;

/** Finds the method and the minutes of each agreed visit; one that has none cannot be laid out and is named. */
final class AgreedVisits {

    private final WeekInputs inputs;
    private final List<Problem> findings;

    AgreedVisits(WeekInputs inputs, List<Problem> findings) {
        this.inputs = inputs;
        this.findings = findings;
    }

    /** By start, then site. */
    List<AgreedVisit> of(List<AgreedTask> tasks) {
        List<AgreedVisit> visits = new ArrayList<>();
        for (AgreedTask task : tasks) {
            if (!task.cleaning()) {
                Optional<AgreedVisit> visit = visit(task);
                visit.ifPresentOrElse(visits::add, () -> findings.add(withoutMinutes(task)));
            }
        }
        visits.sort(Comparator.comparing(AgreedVisit::start).thenComparing(AgreedVisit::name));
        return List.copyOf(visits);
    }

    private Optional<AgreedVisit> visit(AgreedTask task) {
        VisitPart part = task.part().orElseThrow();
        Optional<Site> site = task.site().flatMap(inputs.round()::site);
        Optional<Method> method = site.flatMap(one -> inputs.decision(one.id()))
                .flatMap(decision -> decision.chosen())
                .map(MethodOutcome.Chosen::method)
                .flatMap(inputs.round()::method);
        Optional<MethodPart> rules = method.flatMap(one ->
                one.parts().stream().filter(known -> known.part() == part).findFirst());
        Optional<PartEffort> effort =
                site.flatMap(one -> inputs.effort(one.id())).flatMap(one -> one.part(part));
        if (rules.isEmpty() || effort.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new AgreedVisit(task, site.orElseThrow(), method.orElseThrow().id(), rules.get(), effort.get()));
    }

    private Problem withoutMinutes(AgreedTask task) {
        String site = task.site().orElse("?");
        String decided = inputs.decision(site)
                .flatMap(decision -> decision.chosen())
                .map(chosen -> "rule " + chosen.rule() + " gives " + chosen.method())
                .orElse("the method table gives no method");
        return Problem.error(
                "agreed-without-minutes",
                AgreedWeek.place(task),
                "how long it takes is not known: " + decided + ", which has no part "
                        + task.part().map(VisitPart::word).orElse("?") + " with minutes on site",
                "a part of the site's method",
                "correct the part, or the site's method; until then this line is left out of the week");
    }
}
