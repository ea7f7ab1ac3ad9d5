package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Round;

/** What a person should settle before anyone goes by the advised settings. */
final class SettingsFindings {

    private SettingsFindings() {}

    static List<Problem> of(Round round, List<VisitEffort> efforts, PowerTransfer transfer) {
        List<Problem> findings = new ArrayList<>();
        round.pastVisits().stream()
                .filter(visit -> visit.settings().isPresent()
                        && visit.conductivityUsCm().isPresent()
                        && visit.conductivityBasis().isEmpty())
                .forEach(visit -> findings.add(noBasis(visit)));
        for (VisitEffort effort : efforts) {
            round.site(effort.site())
                    .filter(site -> effort.shock().isPresent())
                    .ifPresent(site -> tooWarm(round, effort.site(), site.conditions(), findings));
            effort.settings()
                    .filter(start -> aboveCeiling(start, transfer))
                    .ifPresent(start -> findings.add(aboveCeiling(effort.site(), start)));
        }
        return findings;
    }

    /** The two meanings differ by a fifth and more in cold water, so neither may be guessed. */
    private static Problem noBasis(PastVisit visit) {
        return Problem.warning(
                "conductivity-basis-missing",
                SourcePlace.part("past_visits.csv", visit.site() + " " + visit.date())
                        .column("conductivity_basis"),
                Plain.number(visit.conductivityUsCm().getAsDouble(), 1)
                        + " µS/cm were written down, and not whether ambient or referred to 25 °C",
                "ambient or 25C",
                "look it up in the field sheet or the meter's manual; until then no voltage is advised from this visit");
    }

    private static void tooWarm(Round round, String site, Conditions today, List<Problem> findings) {
        if (today.waterTempC().isPresent()) {
            WaterCautions.stop(
                            today.waterTempC().getAsDouble(),
                            round.header().electric().limits())
                    .ifPresent(words -> findings.add(Problem.warning(
                            "water-too-warm",
                            SourcePlace.part("sites.csv", site).column("water_temp_c"),
                            words,
                            "water below "
                                    + Plain.number(
                                            round.header().electric().limits().stopC(), 1) + " °C",
                            "plan it for dawn or another day, or change the method")));
        }
    }

    private static boolean aboveCeiling(StartSettings start, PowerTransfer transfer) {
        return start.adviceVoltageV().isEmpty()
                && start.ceiling().isPresent()
                && start.lastAmbientUsCm().orElse(0) > 0
                && start.todayAmbientUsCm().orElse(0) > 0
                && Math.round(transfer.rescaledVoltageV(
                                start.last().voltageV(),
                                start.lastAmbientUsCm().getAsDouble(),
                                start.todayAmbientUsCm().getAsDouble()))
                        > start.ceiling().get().voltageMaxV();
    }

    private static Problem aboveCeiling(String site, StartSettings start) {
        double ceilingV = start.ceiling().orElseThrow().voltageMaxV();
        return Problem.warning(
                "advice-above-ceiling",
                SourcePlace.part("sites.csv", site).column("conductivity_us_cm"),
                "the voltage that worked on " + start.lastDate()
                        + ", rescaled to today's water, lies above the ceiling of " + Plain.number(ceilingV, 0)
                        + " V, so none is advised",
                "water in which the ceiling is enough",
                "stay below the ceiling; where fish do not respond, use another method");
    }
}
