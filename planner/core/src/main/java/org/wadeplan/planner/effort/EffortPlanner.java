package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Works out, for each site with a method that means a visit, how long it takes and what to set and carry. */
public final class EffortPlanner {

    private final TimeOnSite time;
    private final StartSettingsAdvice settings;
    private final ShockTimeModel shock;
    private final BatteryPlan batteries;

    /** Button time, and packs where the table of packs covers the water. */
    private record Power(Optional<ShockTime> shock, Optional<BatteryNeed> packs) {

        static final Power NONE = new Power(Optional.empty(), Optional.empty());
    }

    private EffortPlanner(EffortRules rules, List<PastVisit> pastVisits, List<Method> methods) {
        History history = new History(pastVisits, methods);
        this.time = new TimeOnSite(history);
        this.settings = new StartSettingsAdvice(history, rules.conductivityRule(), rules.advice());
        this.shock = new ShockTimeModel(history);
        this.batteries = new BatteryPlan(
                rules.packSeconds(), rules.reserveFactor(), rules.electric().packPower());
    }

    /**
     * The effort of each visit, in the order of the decisions. A site without a method, with a method that means no visit,
     * or whose time on site cannot be worked out has none; {@link #findings} says why of the last.
     */
    public static List<VisitEffort> plan(Round round, List<MethodDecision> decisions) {
        return all(round, decisions).stream()
                .flatMap(visit -> visit.value().stream())
                .toList();
    }

    /**
     * What stands in the way of a figure: an unknown width, water that the table of packs does not cover; and what a person
     * should look into before going by the settings.
     */
    public static List<Problem> findings(Round round, List<MethodDecision> decisions) {
        EffortRules rules = EffortRules.of(round);
        return Stream.of(
                        all(round, decisions).stream().flatMap(visit -> visit.problems().stream()),
                        CeilingCheck.findings(round.pastVisits(), rules.conductivityRule(), rules.advice()).stream(),
                        SettingsFindings.of(round, plan(round, decisions), rules.powerTransfer()).stream())
                .flatMap(findings -> findings)
                .sorted(Problem.WORST_FIRST)
                .toList();
    }

    private static List<Checked<VisitEffort>> all(Round round, List<MethodDecision> decisions) {
        EffortPlanner planner = new EffortPlanner(EffortRules.of(round), round.pastVisits(), round.methods());
        List<Checked<VisitEffort>> visits = new ArrayList<>();
        for (MethodDecision decision : decisions) {
            Optional<Site> site = round.site(decision.site());
            Optional<Method> method = decision.chosen().flatMap(chosen -> round.method(chosen.method()));
            if (site.isPresent() && method.isPresent() && method.get().kind() != MethodKind.NONE) {
                visits.add(planner.visit(site.get(), method.get()));
            }
        }
        return visits;
    }

    static EffortPlanner of(EffortRules rules, List<PastVisit> pastVisits, List<Method> methods) {
        return new EffortPlanner(rules, pastVisits, methods);
    }

    Checked<VisitEffort> visit(Site site, Method method) {
        List<PartEffort> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (MethodPart part : method.parts().stream()
                .sorted(Comparator.comparing(MethodPart::order))
                .toList()) {
            Checked<PartEffort> effort = time.of(site, method, part);
            effort.value().ifPresent(parts::add);
            problems.addAll(effort.problems());
        }
        boolean electric = method.kind() == MethodKind.ELECTROFISHING;
        Optional<StartSettings> start = electric ? settings.of(site) : Optional.empty();
        Checked<Power> power = electric ? power(site, start) : Checked.of(Power.NONE);
        problems.addAll(power.problems());
        if (parts.size() < method.parts().size()) {
            return Checked.failed(problems);
        }
        return Checked.of(
                new VisitEffort(
                        site.id(),
                        method.id(),
                        List.copyOf(parts),
                        start,
                        power.value().flatMap(Power::packs),
                        power.value().flatMap(Power::shock)),
                problems);
    }

    private Checked<Power> power(Site site, Optional<StartSettings> start) {
        return shock.of(site).then(time -> {
            Checked<BatteryNeed> packs = batteries.of(site, time, start);
            return Checked.of(new Power(Optional.of(time), packs.value()), packs.problems());
        });
    }
}
