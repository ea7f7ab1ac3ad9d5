package org.wadeplan.planner.files;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.reach.LengthRule;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;
import org.wadeplan.geo.reach.SubReachRule;
import org.wadeplan.geo.reach.WidthCurve;
import org.wadeplan.planner.round.ReachSettings;

/** The key {@code reach} of {@code round.json}: how reaches are laid. */
final class ReachJson {

    private static final Range REACH_M = Range.of(1, 10_000, "m");
    private static final Range WIDTHS = Range.of(1, 1000, "widths");
    private static final Words<WidthCurve.AreaUnit> AREA_UNITS = Words.of(WidthCurve.AreaUnit.class);
    private static final Words<WidthCurve.WidthUnit> WIDTH_UNITS = Words.of(WidthCurve.WidthUnit.class);
    private static final Words<Boolean> AREA_FROM = Words.yesNo("upstream-length", "attribute");

    private ReachJson() {}

    static ReachSettings settings(JsonObject top) {
        JsonObject reach = top.object("reach");
        LengthRule length =
                reach.has("length") ? byWidth(reach) : new LengthRule.Fixed(reach.decimal("lengthM", REACH_M));
        SubReachRule pieces = reach.has("subReachLengthM")
                ? new SubReachRule.OfLength(reach.decimal("subReachLengthM", REACH_M))
                : new SubReachRule.Equal(reach.integer("subReachCount", Range.of(1, SubReachRule.MOST, "")));
        bothGiven(reach);
        ReachProtocol protocol = new ReachProtocol(length, pieces, reach.text("source"));
        wholePieces(reach, protocol);
        ReachSettings settings = new ReachSettings(
                protocol,
                reach.has("widthCurve") ? Optional.of(curve(reach)) : Optional.empty(),
                reach.has("driftLimitM")
                        ? reach.decimal("driftLimitM", Range.of(0, 1000, "m"))
                        : ReachSettings.USUAL_DRIFT_LIMIT_M);
        reach.noteUnknownKeys();
        return settings;
    }

    private static void bothGiven(JsonObject reach) {
        if (reach.has("length") && reach.has("lengthM")) {
            reach.refuse("length", twoRules("lengthM and length"));
        }
        if (reach.has("subReachLengthM") && reach.has("subReachCount")) {
            reach.refuse("subReachLengthM", twoRules("subReachCount and subReachLengthM"));
        }
    }

    private static Fault twoRules(String keys) {
        return new Fault("reach-two-rules", "both " + keys + " are given", "one of the two", "take one out");
    }

    /** A fixed length must be a whole number of sub-reaches of a given length, and no more than there are letters. */
    private static void wholePieces(JsonObject reach, ReachProtocol protocol) {
        if (!(protocol.length() instanceof LengthRule.Fixed fixed)) {
            return;
        }
        if (protocol.at(Optional.empty()) instanceof Sizing.Unsized unsized) {
            reach.refuse(
                    "subReachLengthM",
                    new Fault(
                            "reach-letters-run-out",
                            unsized.reason(),
                            "at most 26 sub-reaches, lettered A to Z",
                            "make the sub-reaches longer"));
        } else if (protocol.subReaches() instanceof SubReachRule.OfLength pieces
                && Math.abs(fixed.lengthM() / pieces.lengthM() - Math.rint(fixed.lengthM() / pieces.lengthM()))
                        > 1e-9) {
            reach.refuse(
                    "subReachLengthM",
                    new Fault(
                            "reach-pieces-uneven",
                            "a reach of " + fixed.lengthM() + " m is no whole number of sub-reaches of "
                                    + pieces.lengthM() + " m",
                            "a length that divides the reach's",
                            "change one of the two"));
        }
    }

    private static LengthRule byWidth(JsonObject reach) {
        JsonObject length = reach.object("length");
        double floorM = length.decimal("floorM", REACH_M);
        double capM = length.decimal("capM", REACH_M);
        double multiple = length.decimal("widths", WIDTHS);
        Optional<LengthRule.WideCap> wide = length.has("wideFromM") || length.has("wideCapM")
                ? Optional.of(new LengthRule.WideCap(
                        length.decimal("wideFromM", Range.WIDTH_M), length.decimal("wideCapM", REACH_M)))
                : Optional.empty();
        length.noteUnknownKeys();
        if (capM < floorM || wide.map(LengthRule.WideCap::capM).orElse(capM) < capM) {
            length.refuse(
                    "capM",
                    new Fault(
                            "reach-cap-low",
                            "a cap is below what it caps: floorM " + floorM + ", capM " + capM
                                    + wide.map(cap -> ", wideCapM " + cap.capM())
                                            .orElse(""),
                            "floorM <= capM <= wideCapM",
                            "check the three"));
            return new LengthRule.Widths(multiple, REACH_M.min(), REACH_M.min(), Optional.empty());
        }
        return new LengthRule.Widths(multiple, floorM, capM, wide);
    }

    private static WidthCurve curve(JsonObject reach) {
        JsonObject curve = reach.object("widthCurve");
        boolean fromLength = curve.has("areaFrom") && curve.word("areaFrom", AREA_FROM);
        WidthCurve made = new WidthCurve(
                curve.decimal("coefficient", Range.of(0.001, 1000, "")),
                curve.decimal("exponent", Range.of(0.01, 2, "")),
                curve.word("areaUnit", AREA_UNITS),
                curve.word("widthUnit", WIDTH_UNITS),
                fromLength
                        ? OptionalDouble.of(curve.decimal("km2PerUpstreamKm", Range.of(0.001, 1000, "km2 per km")))
                        : OptionalDouble.empty(),
                curve.text("source"));
        curve.noteUnknownKeys();
        return made;
    }
}
