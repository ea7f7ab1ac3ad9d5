package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Site;

/** Last visit's settings, with the voltage rescaled to today's water beside them. */
final class StartSettingsAdvice {

    private static final String ALWAYS =
            "This is advice, never an order: start low, raise the voltage first and only as far"
                    + " as fish need, stop rising once they recover quickly. The operator decides; the local code, the permit and"
                    + " their ceilings come first.";

    private final History history;
    private final ConductivityRule rule;
    private final PowerTransfer transfer;

    /** An ambient conductivity, where it could be made out, and how in words. */
    private record Ambient(OptionalDouble valueUsCm, String words) {}

    StartSettingsAdvice(History history, ConductivityRule rule, PowerTransfer transfer) {
        this.history = history;
        this.rule = rule;
        this.transfer = transfer;
    }

    /** Empty where no earlier visit recorded its settings: then the operator starts from the code's own table. */
    Optional<StartSettings> of(Site site) {
        return history.lastWithSettings(site.id())
                .flatMap(visit -> visit.settings().map(last -> settings(site, visit, last)));
    }

    private StartSettings settings(Site site, PastVisit visit, ElectricSettings last) {
        Ambient then = ambient(visit);
        OptionalDouble today = site.conditions().conductivityUsCm();
        OptionalInt advice = advice(last, then.valueUsCm(), today);
        return new StartSettings(
                last,
                visit.date(),
                then.valueUsCm(),
                today,
                advice,
                String.join(
                        " ", lastWords(visit, last), then.words(), adviceWords(last, then.valueUsCm(), today), ALWAYS),
                cautions(last, site.conditions()));
    }

    private OptionalInt advice(ElectricSettings last, OptionalDouble then, OptionalDouble today) {
        return usable(then) && usable(today)
                ? OptionalInt.of((int)
                        Math.round(transfer.rescaledVoltageV(last.voltageV(), then.getAsDouble(), today.getAsDouble())))
                : OptionalInt.empty();
    }

    private static boolean usable(OptionalDouble conductivityUsCm) {
        return conductivityUsCm.orElse(0) > 0;
    }

    private static String lastWords(PastVisit visit, ElectricSettings last) {
        return "On " + visit.date() + ": " + Plain.number(last.frequencyHz(), 1) + " Hz, "
                + Plain.number(last.pulseWidthMs(), 2) + " ms, " + Plain.number(last.dutyPct(), 1) + " % duty, "
                + Plain.number(last.voltageV(), 0) + " V.";
    }

    private Ambient ambient(PastVisit visit) {
        if (visit.conductivityUsCm().isEmpty()) {
            return new Ambient(OptionalDouble.empty(), "The conductivity was not recorded then.");
        }
        double value = visit.conductivityUsCm().getAsDouble();
        String read = Plain.number(value, 1) + " µS/cm";
        if (visit.conductivityBasis().isEmpty()) {
            return new Ambient(
                    OptionalDouble.empty(), "Then " + read + ", and nobody wrote whether ambient or at 25 °C.");
        }
        return visit.conductivityBasis().get() == ConductivityBasis.AMBIENT
                ? new Ambient(OptionalDouble.of(value), "Then " + read + " ambient.")
                : fromSpecific(value, read, visit.waterTempC());
    }

    private Ambient fromSpecific(double specificUsCm, String read, OptionalDouble waterTempC) {
        Optional<ConductivityConversion> conversion = ConductivityConversion.of(rule);
        if (waterTempC.isEmpty() || conversion.isEmpty()) {
            return new Ambient(
                    OptionalDouble.empty(), "Then " + read + " at 25 °C, which cannot be turned into ambient here.");
        }
        ConductivityConversion.Converted ambient = conversion.get().toAmbient(specificUsCm, waterTempC.getAsDouble());
        String words = "Then " + read + " at 25 °C, which is " + Plain.number(ambient.valueUsCm(), 0)
                + " µS/cm ambient at " + Plain.number(waterTempC.getAsDouble(), 1) + " °C (" + ambient.rule() + ").";
        return new Ambient(OptionalDouble.of(ambient.valueUsCm()), words);
    }

    private String adviceWords(ElectricSettings last, OptionalDouble then, OptionalDouble today) {
        OptionalInt advice = advice(last, then, today);
        if (advice.isEmpty()) {
            return "No voltage is advised: it takes the ambient conductivity of then and of today.";
        }
        return "For " + Plain.number(today.getAsDouble(), 1) + " µS/cm today power transfer (fish "
                + Plain.number(transfer.fishConductivityUsCm(), 1) + " µS/cm; Kolz 1989, Miranda and Dolan 2003) gives "
                + advice.getAsInt() + " V. Keep frequency and duty as they were: catches compare only then.";
    }

    private static List<String> cautions(ElectricSettings last, Conditions today) {
        List<String> cautions = new ArrayList<>();
        today.conductivityUsCm().ifPresent(ambientUsCm -> cautions.addAll(WaterCautions.conductivity(ambientUsCm)));
        today.waterTempC().ifPresent(tempC -> cautions.addAll(WaterCautions.temperature(tempC)));
        cautions.add(WaterCautions.largeSalmonids(last.frequencyHz()));
        PulseDuty.contradiction(last).ifPresent(cautions::add);
        return List.copyOf(cautions);
    }
}
