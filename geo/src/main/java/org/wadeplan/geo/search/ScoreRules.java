package org.wadeplan.geo.search;

/**
 * What each part of a score weighs and when it earns its full weight.
 *
 * @param clearance distance along the stream to the nearest place to keep clear of, metres
 * @param walkIn way on foot, metres
 * @param lengthSpread width of the band of ground length as a share of the mapped length
 * @param slope percent
 * @param width metres
 * @param source where the weights come from
 */
public record ScoreRules(Part clearance, Part walkIn, Part lengthSpread, Part slope, Part width, String source) {

    /** No clearance is too wide. */
    private static final double FAR_M = 1e9;

    /**
     * One part.
     *
     * @param weight points at best, 0 or more; 0 leaves the part out
     * @param preference when it earns them
     */
    public record Part(double weight, Preference preference) {

        public Part {
            if (!(weight >= 0) || !Double.isFinite(weight)) {
                throw new IllegalArgumentException("A weight is 0 or more, not " + weight);
            }
        }
    }

    /** Invented, to be edited. Band from the published mean, 12.5 %, to 30 %; slopes of pool-riffle streams at best. */
    public static final ScoreRules USUAL = new ScoreRules(
            new Part(30, new Preference(0, 200, FAR_M, FAR_M)),
            new Part(25, new Preference(0, 0, 100, 1000)),
            new Part(15, new Preference(0, 0, 0.125, 0.30)),
            new Part(15, new Preference(0, 0.1, 2, 8)),
            new Part(15, new Preference(0.5, 2, 10, 20)),
            "invented default, edit");

    /** Metres of clearance beyond which more earns nothing. */
    double fullClearanceM() {
        return clearance.preference().goodFrom();
    }

    /** Points of all parts together, at best. */
    double fullWeight() {
        return clearance.weight() + lengthSpread.weight() + width.weight() + slope.weight() + walkIn.weight();
    }
}
