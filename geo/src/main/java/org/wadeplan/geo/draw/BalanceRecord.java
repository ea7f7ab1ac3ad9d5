package org.wadeplan.geo.draw;

import java.util.Locale;

/**
 * How evenly the base lies in the whole frame, beside what chance alone gives there.
 *
 * <p>The figure is B of Stevens & Olsen 2004: 0 is perfect; simple random draws have about 0.3 in a compact area and more
 * along a network; spatially balanced designs have 0.07 to 0.14.
 *
 * @param figure of the base
 * @param simpleRandomMean mean figure of as many units of each stratum drawn simply at random
 * @param simpleRandomLeast the least of them
 * @param simpleRandomMost the greatest of them
 * @param simpleRandomDraws how many such draws were made, from the same seed
 */
public record BalanceRecord(
        double figure,
        double simpleRandomMean,
        double simpleRandomLeast,
        double simpleRandomMost,
        int simpleRandomDraws) {

    /** What the figure means here, in a sentence. */
    public String meaning() {
        String verdict;
        if (simpleRandomMean == 0) {
            verdict = "a single unit has nothing to be balanced against";
        } else if (figure <= simpleRandomMean / 2) {
            verdict = "the draw covers the frame far more evenly than chance would";
        } else if (figure <= simpleRandomMean * 0.8) {
            verdict = "the draw covers the frame somewhat more evenly than chance would; strata that lie among each"
                    + " other, or sizes that differ from their lengths, cost balance over the whole";
        } else {
            verdict = "the draw covers the whole frame hardly more evenly than chance would: see the balance within"
                    + " each stratum";
        }
        return String.format(
                Locale.ROOT,
                "Balance %.3f (0 is perfect). Simple random draws of the same size from the same frame: mean %.3f,"
                        + " from %.3f to %.3f in %d draws. So %s.",
                figure,
                simpleRandomMean,
                simpleRandomLeast,
                simpleRandomMost,
                simpleRandomDraws,
                verdict);
    }
}
