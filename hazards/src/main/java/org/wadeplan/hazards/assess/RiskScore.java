package org.wadeplan.hazards.assess;

/**
 * How often and how bad, on two scales anchored on powers of ten, so that adding the indices multiplies chance by harm.
 *
 * <p>Painted grids of multiplied ranks can order two hazards the wrong way round (Cox 2008, Risk Analysis 28:497); sums of
 * logarithms hardly do. The anchors are a local setting.
 *
 * @param likelihood 1 (one visit in 100 000) to 5 (one visit in 10)
 * @param consequence 1 to 5, each ten times as harmful as the one before; 5 is death
 */
public record RiskScore(int likelihood, int consequence) {

    public RiskScore {
        if (likelihood < 1 || likelihood > 5 || consequence < 1 || consequence > 5) {
            throw new IllegalArgumentException(
                    "Likelihood and consequence run from 1 to 5: " + likelihood + ", " + consequence);
        }
    }

    /** Logarithm of chance a visit times relative harm, -5 to 3. */
    public int log10() {
        int chanceLog10 = likelihood - 6;
        int harmLog10 = consequence - 1;
        return chanceLog10 + harmLog10;
    }

    public Band band() {
        return Band.of(log10());
    }

    public boolean canKill() {
        return consequence == 5;
    }

    RiskScore likelier(int steps) {
        return new RiskScore(Math.min(5, Math.max(1, likelihood + steps)), consequence);
    }
}
