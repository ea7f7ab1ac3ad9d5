package org.wadeplan.geo.reach;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a mapped stretch probably is on the ground, with what was measured for that and what was assumed.
 *
 * <p>Lower end: as mapped. Upper end: the mapped length, rounded through its own vertices, short by the published mean of
 * {@link GroundLength#MEAN_SHORTFALL}; where vertices stand too far apart to show the channel's bends, short by up to two
 * published standard deviations more. Bends are taken to be {@link #WIDTHS_PER_WAVE} widths long (Leopold and Wolman
 * 1960, from memory). Eight vertices to a bend's wave show it, two do not.
 *
 * @param mappedM along the mapped line, metres
 * @param lowM as mapped, metres
 * @param highM metres
 * @param shape what the line itself shows
 * @param measured what the band rests on, in words
 * @param assumed what it takes on trust, in words
 */
public record LengthBand(
        double mappedM, double lowM, double highM, StretchShape shape, List<String> measured, List<String> assumed) {

    /** Standard deviation of the share by which mapped lines were too short: nafm.10793. */
    public static final double SHORTFALL_SD = 0.041;

    /** Length of a meander's wave in channel widths. */
    public static final double WIDTHS_PER_WAVE = 11;

    private static final double FINEST_OF_WAVE = 1.0 / 8;
    private static final double COARSEST_OF_WAVE = 1.0 / 2;

    public LengthBand {
        measured = List.copyOf(measured);
        assumed = List.copyOf(assumed);
    }

    /**
     * The band for a stretch.
     *
     * @param width the stream's mean width; where unknown, vertices count as too far apart to show bends
     */
    public static LengthBand of(StretchShape shape, Optional<MeanWidth> width) {
        double coarse = width.map(known -> coarseness(shape, known.widthM())).orElse(1.0);
        double shortfall = shortfall(coarse);
        double highM = shape.lengthM() * (1 + share(shape, shortfall));
        return new LengthBand(
                shape.lengthM(), shape.lengthM(), highM, shape, measured(shape), assumed(width, coarse, shortfall));
    }

    /**
     * How much of its bends a line must leave out: 0 with eight vertices or more to a wave, 1 with two or fewer.
     *
     * @param widthM the channel's mean width
     */
    public static double coarseness(StretchShape shape, double widthM) {
        double ofWave = shape.vertexSpacingM() / (WIDTHS_PER_WAVE * widthM);
        return Math.min(1, Math.max(0, (ofWave - FINEST_OF_WAVE) / (COARSEST_OF_WAVE - FINEST_OF_WAVE)));
    }

    private static double shortfall(double coarse) {
        return GroundLength.MEAN_SHORTFALL + 2 * coarse * SHORTFALL_SD;
    }

    private static double share(StretchShape shape, double shortfall) {
        return (1 + shape.roundingShare()) / (1 - shortfall) - 1;
    }

    /**
     * Width of a band as a share of the mapped length, without making the band.
     *
     * @param widthM the channel's mean width
     */
    public static double spreadShare(StretchShape shape, double widthM) {
        return share(shape, shortfall(coarseness(shape, widthM)));
    }

    /** Width of the band as a share of the mapped length. */
    public double spreadShare() {
        return (highM - lowM) / mappedM;
    }

    private static List<String> measured(StretchShape shape) {
        return List.of(
                String.format(Locale.ROOT, "%.1f m along the line", shape.lengthM()),
                String.format(Locale.ROOT, "a vertex every %.1f m", shape.vertexSpacingM()),
                Double.isInfinite(shape.sinuosity())
                        ? "the line comes back to where it began"
                        : String.format(Locale.ROOT, "sinuosity %.2f", shape.sinuosity()),
                String.format(
                        Locale.ROOT, "bends rounded through the vertices add %.1f %%", 100 * shape.roundingShare()));
    }

    private static List<String> assumed(Optional<MeanWidth> width, double coarse, double shortfall) {
        String bends = width.map(known -> String.format(
                        Locale.ROOT,
                        "bends of %.0f m, %.0f widths of %s: this line shows %.0f %% of what eight vertices a bend would",
                        WIDTHS_PER_WAVE * known.widthM(),
                        WIDTHS_PER_WAVE,
                        known.words(),
                        100 * (1 - coarse)))
                .orElse("no width is known, so the line is taken to show no bends");
        return List.of(
                String.format(
                        Locale.ROOT,
                        "mapped lines fall up to %.1f %% short (mean 11.1 %%, SD 4.1 %%: nafm.10793)",
                        100 * shortfall),
                bends,
                "the line is no longer than the channel; lines traced through grid cells may be");
    }

    /** {@code about 150–169 m on the ground; lay it out by tape}. */
    public String words() {
        return new GroundLength(mappedM, lowM, highM).words();
    }
}
