package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;

/**
 * What to mind before current goes into a water. Limits from memory are defaults to check against one's own code, and the
 * sentences say so.
 */
final class WaterCautions {

    private static final double LOW_US_CM = 30;
    private static final double HIGH_US_CM = 500;
    private static final double VERY_HIGH_US_CM = 1000;
    private static final double WARM_C = 18;

    /** Above this, injury to trout rises (spinal injury 4 % at 30 Hz and more at 60 Hz: Chiaramonte et al. 2020). */
    private static final double GENTLE_HZ = 30;

    private WaterCautions() {}

    /** Practical window of backpack units: 30 to 500 uS/cm good, to 1000 marginal (from memory, medium confidence). */
    static List<String> conductivity(double ambientUsCm) {
        List<String> cautions = new ArrayList<>();
        String here = Plain.number(ambientUsCm, 1) + " µS/cm: ";
        if (ambientUsCm < LOW_US_CM) {
            cautions.add(here + "below about 30 most backpack units run short of voltage and the field shrinks to the"
                    + " electrode, where it harms.");
        } else if (ambientUsCm > VERY_HIGH_US_CM) {
            cautions.add(here + "above about 1000 a backpack unit runs short of current; another method is likely the"
                    + " better one.");
        } else if (ambientUsCm > HIGH_US_CM) {
            cautions.add(
                    here + "above about 500 current and packs are the limit; expect less reach and watch the unit's"
                            + " overload.");
        }
        PowerTransfer.untested(ambientUsCm).ifPresent(cautions::add);
        return cautions;
    }

    /** Above 18 degrees C: US National Marine Fisheries Service guidelines of 2000 for listed salmonids, from memory. */
    static List<String> temperature(double waterTempC) {
        return waterTempC > WARM_C
                ? List.of("Water up to " + Plain.number(waterTempC, 1)
                        + " °C: where salmonids are listed, no shocking above"
                        + " 18 °C nor where it will be passed (guideline from memory; your own code rules). Fish in the"
                        + " coolest hours.")
                : List.of();
    }

    /** More than half of trout over 300 mm were injured by pulsed DC (Taube 1992). */
    static String largeSalmonids(double frequencyHz) {
        String words = "Where salmonids over 300 mm may be met, smooth DC or at most 30 Hz harms fewer (Taube 1992)";
        return frequencyHz > GENTLE_HZ
                ? words + "; last time it was " + Plain.number(frequencyHz, 1) + " Hz."
                : words + ".";
    }
}
