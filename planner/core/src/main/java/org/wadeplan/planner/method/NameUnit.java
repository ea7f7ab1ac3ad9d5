package org.wadeplan.planner.method;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/** Units as they stand at the end of an input's name: {@code width_m} is in metres. */
public enum NameUnit {
    METRE("_m", "m", true),
    MILLIMETRE("_mm", "mm", true),
    CENTIMETRE("_cm", "cm", true),
    KILOMETRE("_km", "km", true),
    SQUARE_METRE("_m2", "m²", true),
    DEPTH_VELOCITY("_m2s", "m²/s", true),
    SPEED("_ms", "m/s", true),
    DISCHARGE("_m3s", "m³/s", true),
    CONDUCTIVITY("_us_cm", "µS/cm", true),
    PERCENT("_pct", "%", true),
    FREQUENCY("_hz", "Hz", true),
    SECOND("_s", "s", true),
    MINUTE("_min", "min", true),
    HOUR("_h", "h", true),
    COUNT("_count", "", true),
    CELSIUS("_c", "°C", false);

    private final String ending;
    private final String words;
    private final boolean neverNegative;

    NameUnit(String ending, String words, boolean neverNegative) {
        this.ending = ending;
        this.words = words;
        this.neverNegative = neverNegative;
    }

    /** The unit that a name ends in; empty where it ends in none that is known. */
    public static Optional<NameUnit> of(String name) {
        return Arrays.stream(values())
                .filter(unit -> name.endsWith(unit.ending))
                .max(Comparator.comparingInt(unit -> unit.ending.length()));
    }

    /** As people write it, blank for a bare count. */
    public String words() {
        return words;
    }

    /** Whether nothing in this unit can be below zero. */
    public boolean neverNegative() {
        return neverNegative;
    }
}
