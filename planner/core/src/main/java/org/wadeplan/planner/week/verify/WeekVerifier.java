package org.wadeplan.planner.week.verify;

import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;

/**
 * Checks any plan of a week, one that a person edited too, rule by rule. The rules are written from the round's documents
 * and share no code with the search. Finding nothing means that these rules found nothing; it does not make a plan safe.
 */
public final class WeekVerifier {

    static final List<WeekRule> RULES = List.of(
            new UnbrokenDayRule(),
            new TravelTimeRule(),
            new OnSiteTimeRule(),
            new LightRule(),
            new TideRule(),
            new FinishRule(),
            new PermitRule(),
            new ConsentRule(),
            new WorkingHoursRule(),
            new DrivingRule(),
            new RestRule(),
            new CompetenceRule(),
            new RosterRule(),
            new VehicleRule(),
            new KitCleanRule(),
            new ExposureRule(),
            new KitWhereaboutsRule(),
            new CheckRinseRule(),
            new CleaningRule(),
            new CleaningEvidenceRule(),
            new DryingRule(),
            new BathRule(),
            new CertificateRule(),
            new BatteryRule(),
            new PartsRule(),
            new EverySiteRule());

    private WeekVerifier() {}

    /** Everything that was found, worst first; errors where a rule is broken, warnings where it is only just kept. */
    public static List<Problem> verify(Round round, RoundPlan plan) {
        PlanFacts facts = new PlanFacts(round, plan);
        return RULES.stream()
                .flatMap(rule -> rule.check(facts).stream())
                .sorted(Problem.WORST_FIRST)
                .toList();
    }
}
