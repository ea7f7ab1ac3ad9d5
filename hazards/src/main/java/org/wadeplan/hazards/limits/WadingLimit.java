package org.wadeplan.hazards.limits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.hazards.limits.PersonStability.Footing;

/**
 * Which limit on wading bites first for a person: the profile, their own size, or the caps nobody passes.
 *
 * <p>The limit on depth times speed is the least of the profile's, the Finnish estimate for the person (where one is
 * given) and 10 ft2/s; depth and speed have caps of their own.
 */
public final class WadingLimit {

    public static final String TEN_FT2S_SOURCE =
            "US Geological Survey field manual, chapter A9: stay out at 10 ft2/s (from memory)";

    /** Products are compared to a tenth of a square millimetre a second, so that 0.4 x 1.5 is 0.6. */
    private static final double DIGITS = 1e7;

    private WadingLimit() {}

    /** What a limit is on. */
    public enum Measure {
        DEPTH_VELOCITY("depth x speed", "m2/s"),
        DEPTH("depth", "m"),
        VELOCITY("speed", "m/s");

        private final String words;
        private final String unit;

        Measure(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }
    }

    /**
     * One cap and what is known of today's value.
     *
     * @param measure what it is on, with its unit
     * @param name which cap this is, in words
     * @param limit the cap in the measure's unit
     * @param edgeAllowed whether the cap itself may be worked at
     * @param found today's planned value; empty where it is not known
     * @param source where the cap comes from
     */
    public record Cap(
            Measure measure, String name, double limit, boolean edgeAllowed, OptionalDouble found, String source) {

        /** True where the planned value is known and already beyond the cap. */
        public boolean bites() {
            return found.isPresent() && (edgeAllowed ? found.getAsDouble() > limit : found.getAsDouble() >= limit);
        }
    }

    /**
     * Planned water.
     *
     * @param depthM deepest step
     * @param velocityMS fastest water
     * @param depthVelocityM2S the largest product at one place; where empty it is made from the other two
     */
    public record Water(OptionalDouble depthM, OptionalDouble velocityMS, OptionalDouble depthVelocityM2S) {

        /** The product as given, else of the two parts, else empty. */
        public OptionalDouble productM2S() {
            if (depthVelocityM2S.isPresent() || depthM.isEmpty() || velocityMS.isEmpty()) {
                return depthVelocityM2S;
            }
            return OptionalDouble.of(WadingLimit.productM2S(depthM.getAsDouble(), velocityMS.getAsDouble()));
        }
    }

    /**
     * The three caps that count today, one per measure, the tightest of each kind.
     *
     * @param profile the weakest wader's row of the table
     * @param wader the smallest wader's body, where known; outside the tested span the row for new waders counts
     * @param footing of the bed, for the estimate by body
     */
    public static List<Cap> caps(WadingProfile profile, Optional<Wader> wader, Footing footing, Water water) {
        WadingProfile row = wader.isPresent() && byBody(wader.get(), footing).isEmpty() ? WadingProfile.NEW : profile;
        return List.of(
                productCap(row, wader, footing, water),
                new Cap(Measure.DEPTH, row.words(), row.depthM(), true, water.depthM(), row.source()),
                new Cap(Measure.VELOCITY, row.words(), row.velocityMS(), true, water.velocityMS(), row.source()));
    }

    /** Depth times speed, m2/s, free of the last binary digits. */
    static double productM2S(double depthM, double velocityMS) {
        return Math.round(depthM * velocityMS * DIGITS) / DIGITS;
    }

    private static Cap productCap(WadingProfile row, Optional<Wader> wader, Footing footing, Water water) {
        OptionalDouble found = water.productM2S();
        List<Cap> all = new ArrayList<>();
        all.add(new Cap(Measure.DEPTH_VELOCITY, row.words(), row.depthVelocityM2S(), true, found, row.source()));
        wader.flatMap(body -> byBody(body, footing))
                .ifPresent(limit -> all.add(new Cap(
                        Measure.DEPTH_VELOCITY,
                        "size of the smallest wader",
                        limit,
                        true,
                        found,
                        PersonStability.FINNISH_SOURCE)));
        all.add(new Cap(
                Measure.DEPTH_VELOCITY,
                "nobody: 10 square feet a second",
                WadingProfile.NOBODY_M2S,
                false,
                found,
                TEN_FT2S_SOURCE));
        return all.stream().min(Comparator.comparingDouble(Cap::limit)).orElseThrow();
    }

    private static Optional<Double> byBody(Wader wader, Footing footing) {
        return PersonStability.finnishM2S(wader, footing)
                .fold(known -> Optional.of(known.number()), refused -> Optional.empty());
    }
}
