package org.wadeplan.geo.reach;

import java.util.Locale;
import java.util.Optional;

/**
 * An agency's rule for reaches, as data: how long, and into what pieces.
 *
 * @param length fixed, or by width
 * @param subReaches how the reach is parted
 * @param source where the rule comes from
 */
public record ReachProtocol(LengthRule length, SubReachRule subReaches, String source) {

    /** The length and the pieces at one stream, or why there are none. */
    public sealed interface Sizing {

        /**
         * A known size.
         *
         * @param rule the length and number of pieces here
         * @param words how they came about: {@code 40 x 4.2 m (width: sites.csv) = 168 m}
         */
        record Sized(ReachRule rule, String words) implements Sizing {}

        /**
         * No size.
         *
         * @param reason a clause that says what is missing or does not fit
         */
        record Unsized(String reason) implements Sizing {}
    }

    /** The usual case: one length, so many equal pieces. */
    public static ReachProtocol of(ReachRule rule) {
        return new ReachProtocol(
                new LengthRule.Fixed(rule.lengthM()), new SubReachRule.Equal(rule.subReachCount()), rule.source());
    }

    /** The one rule that holds everywhere; empty where the length goes by the width. */
    public Optional<ReachRule> fixedRule() {
        return length instanceof LengthRule.Fixed && at(Optional.empty()) instanceof Sizing.Sized sized
                ? Optional.of(sized.rule())
                : Optional.empty();
    }

    /** The length, or where that goes by the width the floor: no reach by this protocol is shorter. Metres. */
    public double leastLengthM() {
        return length instanceof LengthRule.Widths widths ? widths.floorM() : ((LengthRule.Fixed) length).lengthM();
    }

    /** Most sub-reaches that a reach by this protocol may have. */
    public int mostSubReaches() {
        if (subReaches instanceof SubReachRule.Equal equal) {
            return equal.count();
        }
        return fixedRule().map(ReachRule::subReachCount).orElse(SubReachRule.MOST);
    }

    /**
     * The rule at a stream.
     *
     * @param width the stream's mean wetted width; empty where nobody knows
     */
    public Sizing at(Optional<MeanWidth> width) {
        if (length instanceof LengthRule.Fixed fixed) {
            return parted(fixed.lengthM(), length.words());
        }
        LengthRule.Widths widths = (LengthRule.Widths) length;
        return width.map(known -> parted(widths.lengthM(known.widthM()), words(widths, known)))
                .orElseGet(() -> new Sizing.Unsized("the length is " + widths.words()
                        + ", and no width is known here: not at the site, in no past visit, by no regional curve"));
    }

    private static String words(LengthRule.Widths widths, MeanWidth known) {
        return String.format(
                Locale.ROOT,
                "%.0f x %.1f m (%s), held to %.0f-%.0f m",
                widths.multiple(),
                known.widthM(),
                known.basis(),
                widths.floorM(),
                widths.wide().map(LengthRule.WideCap::capM).orElse(widths.capM()));
    }

    private Sizing parted(double lengthM, String words) {
        if (subReaches instanceof SubReachRule.Equal equal) {
            return new Sizing.Sized(new ReachRule(lengthM, equal.count(), source), words);
        }
        double pieceM = ((SubReachRule.OfLength) subReaches).lengthM();
        int count = wholePieces(lengthM, pieceM);
        if (count < 1 || count > SubReachRule.MOST) {
            return new Sizing.Unsized(String.format(
                    Locale.ROOT,
                    "%.0f m fall into %d sub-reaches of %.0f m, and letters reach from A to Z: 1 to %d",
                    lengthM,
                    count,
                    pieceM,
                    SubReachRule.MOST));
        }
        return new Sizing.Sized(new ReachRule(count * pieceM, count, source), words);
    }

    /** Rounded up to whole pieces, so that no reach falls short of its rule; down where that would break a cap. */
    private int wholePieces(double lengthM, double pieceM) {
        int up = (int) Math.ceil(lengthM / pieceM - 1e-9);
        boolean overCap = length instanceof LengthRule.Widths widths
                && up * pieceM > widths.wide().map(LengthRule.WideCap::capM).orElse(widths.capM()) + 1e-9;
        return overCap ? up - 1 : up;
    }

    /** {@code 150 m fixed, 10 sub-reaches}. */
    public String words() {
        String pieces = subReaches instanceof SubReachRule.Equal equal
                ? equal.count() + " sub-reaches"
                : String.format(Locale.ROOT, "sub-reaches of %.0f m", ((SubReachRule.OfLength) subReaches).lengthM());
        return length.words() + ", " + pieces;
    }
}
