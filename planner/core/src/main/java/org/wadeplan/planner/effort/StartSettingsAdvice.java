package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VoltageCeiling;

/** Last visit's settings, with the voltage rescaled to today's water and the round's ceiling beside them. */
final class StartSettingsAdvice {

    private static final String ALWAYS =
            "This is advice, never an order: start low, raise the voltage first and only as far"
                    + " as fish need, stop rising once they recover quickly. The operator decides; the local code, the permit and"
                    + " their ceilings come first.";

    private static final String NO_CEILING =
            "No row of voltage_ceilings.csv covers this water: read the ceiling off the permit and the code.";

    private final History history;
    private final ConductivityRule rule;
    private final VoltageAdvice.Rules rules;

    StartSettingsAdvice(History history, ConductivityRule rule, VoltageAdvice.Rules rules) {
        this.history = history;
        this.rule = rule;
        this.rules = rules;
    }

    /** Empty where no earlier visit recorded its settings: then the operator starts from the code's own table. */
    Optional<StartSettings> of(Site site) {
        return history.lastWithSettings(site.id())
                .flatMap(visit -> visit.settings().map(last -> settings(site.conditions(), visit, last)));
    }

    private StartSettings settings(Conditions today, PastVisit visit, ElectricSettings last) {
        Ambient then = Ambient.of(visit, rule);
        VoltageAdvice advice = VoltageAdvice.of(last.voltageV(), then.valueUsCm(), today, rules);
        return new StartSettings(
                last,
                visit.date(),
                then.valueUsCm(),
                today.conductivityUsCm(),
                advice.voltageV(),
                String.join(
                        " ",
                        lastWords(visit, last),
                        then.words(),
                        advice.words(),
                        advice.ceiling()
                                .map(row -> ceilingWords(row, advice.voltageV()))
                                .orElse(NO_CEILING),
                        ALWAYS),
                cautions(last, today, advice),
                advice.ceiling());
    }

    private static String lastWords(PastVisit visit, ElectricSettings last) {
        return "On " + visit.date() + ": " + Plain.number(last.frequencyHz(), 1) + " Hz, "
                + Plain.number(last.pulseWidthMs(), 2) + " ms, " + Plain.number(last.dutyPct(), 1) + " % duty, "
                + Plain.number(last.voltageV(), 0) + " V.";
    }

    private static String ceilingWords(VoltageCeiling row, OptionalInt adviceV) {
        return "Ceiling from " + Plain.number(row.conductivityMinUsCm(), 1) + " µS/cm: "
                + Plain.number(row.voltageMaxV(), 0) + " V" + startWords(row, adviceV) + " (" + row.source() + ").";
    }

    /** Where the advice lies below the row's own start, testing begins lower still. */
    private static String startWords(VoltageCeiling row, OptionalInt adviceV) {
        if (row.voltageStartV().isEmpty()) {
            return "";
        }
        double startV = row.voltageStartV().getAsDouble();
        return adviceV.isPresent() && adviceV.getAsInt() < startV
                ? ", testing begins below the advice"
                : ", testing begins at " + Plain.number(startV, 0) + " V";
    }

    private List<String> cautions(ElectricSettings last, Conditions today, VoltageAdvice advice) {
        List<String> cautions = new ArrayList<>(advice.held());
        advice.ceiling().ifPresent(row -> cautions.addAll(CeilingCheck.cautions(last, row)));
        today.conductivityUsCm()
                .ifPresent(ambientUsCm -> cautions.addAll(WaterCautions.conductivity(ambientUsCm, rules.limits())));
        today.waterTempC().ifPresent(tempC -> cautions.addAll(WaterCautions.temperature(tempC, rules.limits())));
        cautions.add(WaterCautions.largeSalmonids(last.frequencyHz()));
        PulseDuty.contradiction(last).ifPresent(cautions::add);
        return List.copyOf(cautions);
    }
}
