package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.ElectricLimits;

/**
 * What to mind before current goes into a water. Limits from memory are defaults to check against one's own code, and the
 * sentences say so.
 */
final class WaterCautions {

    /** Above this, injury to trout rises (spinal injury 4 % at 30 Hz and more at 60 Hz: Chiaramonte et al. 2020). */
    private static final double GENTLE_HZ = 30;

    private WaterCautions() {}

    /** By the round's own window; by default 30 to 500 uS/cm good, to 1000 marginal (from memory, medium confidence). */
    static List<String> conductivity(double ambientUsCm, ElectricLimits limits) {
        List<String> cautions = new ArrayList<>();
        String here = Plain.number(ambientUsCm, 1) + " µS/cm: ";
        if (ambientUsCm < limits.lowUsCm()) {
            cautions.add(here + "below about " + Plain.number(limits.lowUsCm(), 0)
                    + " most backpack units run short of voltage and the field shrinks to the"
                    + " electrode, where it harms.");
        } else if (ambientUsCm > limits.veryHighUsCm()) {
            cautions.add(here + "above about " + Plain.number(limits.veryHighUsCm(), 0)
                    + " a backpack unit runs short of current; another method is likely the" + " better one.");
        } else if (ambientUsCm > limits.highUsCm()) {
            cautions.add(here + "above about " + Plain.number(limits.highUsCm(), 0)
                    + " current and packs are the limit; expect less reach and watch the unit's" + " overload.");
        }
        PowerTransfer.untested(ambientUsCm).ifPresent(cautions::add);
        return cautions;
    }

    /**
     * Above 18 degrees C by default: US National Marine Fisheries Service guidelines of 2000 for listed salmonids, from
     * memory. Below 5 degrees C by default: poor response in cold water, from memory.
     */
    static List<String> temperature(double waterTempC, ElectricLimits limits) {
        String here = "Water up to " + Plain.number(waterTempC, 1) + " °C: ";
        if (waterTempC > limits.warmC()) {
            return List.of(here + "where salmonids are listed, no shocking above " + Plain.number(limits.warmC(), 1)
                    + " °C nor where it will be passed (guideline from memory; your own code rules). Fish in the"
                    + " coolest hours.");
        }
        return waterTempC < limits.coldC()
                ? List.of(here + "below about " + Plain.number(limits.coldC(), 1)
                        + " °C fish respond poorly; more voltage harms them before it draws them.")
                : List.of();
    }

    /** Why no current goes in at all; empty below the round's stop. */
    static Optional<String> stop(double waterTempC, ElectricLimits limits) {
        return waterTempC >= limits.stopC()
                ? Optional.of("STOP: water up to " + Plain.number(waterTempC, 1) + " °C, and current stays off from "
                        + Plain.number(limits.stopC(), 1) + " °C on (" + limits.source()
                        + "). Measure; start at dawn, another day, or another method.")
                : Optional.empty();
    }

    /** More than half of trout over 300 mm were injured by pulsed DC (Taube 1992). */
    static String largeSalmonids(double frequencyHz) {
        String words = "Where salmonids over 300 mm may be met, smooth DC or at most 30 Hz harms fewer (Taube 1992)";
        return frequencyHz > GENTLE_HZ
                ? words + "; last time it was " + Plain.number(frequencyHz, 1) + " Hz."
                : words + ".";
    }
}
