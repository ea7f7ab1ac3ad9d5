package org.wadeplan.geo.terrain;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * What a mountain stream's bed usually looks like at a slope. The ranges overlap: slope alone does not decide.
 *
 * <p>Source: Montgomery and Buffington 1997, Channel-reach morphology in mountain drainage basins, Geological Society of
 * America Bulletin 109:596; the figures are from memory.
 */
public enum ChannelType {
    DUNE_RIPPLE("dune-ripple", 0, 0.1),
    POOL_RIFFLE("pool-riffle", 0.1, 2),
    PLANE_BED("plane-bed", 1, 3),
    STEP_POOL("step-pool", 2, 8),
    CASCADE("cascade", 6.5, Double.POSITIVE_INFINITY);

    private final String words;
    private final double fromPercent;
    private final double belowPercent;

    ChannelType(String words, double fromPercent, double belowPercent) {
        this.words = words;
        this.fromPercent = fromPercent;
        this.belowPercent = belowPercent;
    }

    /** Every type that is usual at a slope: {@code pool-riffle or plane-bed}. */
    public static String words(double percent) {
        return Arrays.stream(values())
                .filter(type -> percent >= type.fromPercent && percent < type.belowPercent)
                .map(type -> type.words)
                .collect(Collectors.joining(" or "));
    }
}
