package org.wadeplan.planner.files;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.ElectricLimits;
import org.wadeplan.planner.round.ElectricRules;
import org.wadeplan.planner.round.PackPower;

/** Reads what {@code round.json} says about current in water. Every part of it may be left out. */
final class ElectricJson {

    private static final Range SHARE = Range.of(0.05, 1, "");
    private static final Range PACK_WH = Range.of(1, 5000, "Wh");
    private static final Range OHM = Range.of(1, 100_000, "ohm");
    private static final List<String> POWER_KEYS =
            List.of("packWh", "depthOfDischarge", "efficiency", "resistanceAt100Ohm");

    private ElectricJson() {}

    static ElectricRules electric(JsonObject top, JsonObject battery) {
        String source = battery.text("source");
        Optional<PackPower> packPower = packPower(battery, source);
        battery.noteUnknownKeys();
        return new ElectricRules(limits(top), packPower);
    }

    private static ElectricLimits limits(JsonObject top) {
        if (!top.has("electricity")) {
            return ElectricLimits.DEFAULT;
        }
        JsonObject electricity = top.object("electricity");
        ElectricLimits limits = new ElectricLimits(
                electricity.decimal("lowUsCm", Range.CONDUCTIVITY_US_CM),
                electricity.decimal("highUsCm", Range.CONDUCTIVITY_US_CM),
                electricity.decimal("veryHighUsCm", Range.CONDUCTIVITY_US_CM),
                electricity.decimal("coldC", Range.WATER_TEMP_C),
                electricity.decimal("warmC", Range.WATER_TEMP_C),
                electricity.decimal("stopC", Range.WATER_TEMP_C),
                electricity.text("source"));
        electricity.noteUnknownKeys();
        boolean rising = limits.lowUsCm() <= limits.highUsCm()
                && limits.highUsCm() <= limits.veryHighUsCm()
                && limits.coldC() <= limits.warmC()
                && limits.warmC() <= limits.stopC();
        if (!rising) {
            top.refuse(
                    "electricity",
                    new Fault(
                            "limits-not-rising",
                            "the limits do not rise",
                            "lowUsCm, highUsCm, veryHighUsCm and coldC, warmC, stopC, none below the one before",
                            "put them in order"));
        }
        return limits;
    }

    /** All four or none: half of them give no minutes. */
    private static Optional<PackPower> packPower(JsonObject battery, String source) {
        if (POWER_KEYS.stream().filter(battery::has).count() == 0) {
            return Optional.empty();
        }
        return Optional.of(new PackPower(
                battery.decimal("packWh", PACK_WH),
                battery.decimal("depthOfDischarge", SHARE),
                battery.decimal("efficiency", SHARE),
                battery.decimal("resistanceAt100Ohm", OHM),
                source));
    }
}
