package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.geo.search.Reason;
import org.wadeplan.geo.search.Score;
import org.wadeplan.geo.terrain.Slope;

/** A report as map layers in the round's metric system. Unknown figures are left out. */
final class CandidateLayers {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final CandidateReport report;
    private final Optional<StatedSystem> crs;
    private final double uncertaintyM;

    /**
     * @param crs code of the round's system
     * @param uncertaintyM of a stake's place on the ground, metres
     */
    CandidateLayers(CandidateReport report, String crs, double uncertaintyM) {
        this.report = report;
        this.crs = Optional.of(StatedSystem.code(crs));
        this.uncertaintyM = uncertaintyM;
    }

    FeatureLayer candidates() {
        return layer(
                "candidates",
                Kind.LINESTRING,
                List.of(
                        Field.text("candidate"),
                        Field.whole("rank"),
                        Field.decimal("score"),
                        Field.text("score_parts"),
                        Field.text("stream"),
                        Field.text("water"),
                        Field.text("catchment"),
                        Field.decimal("start_chainage_m"),
                        Field.decimal("from_mouth_m"),
                        Field.decimal("length_m"),
                        Field.decimal("ground_low_m"),
                        Field.decimal("ground_high_m"),
                        Field.decimal("slope_percent"),
                        Field.whole("strahler"),
                        Field.decimal("width_m"),
                        Field.text("width_basis"),
                        Field.decimal("walk_in_m"),
                        Field.text("land"),
                        Field.text("stake_bank"),
                        Field.text("not_checked")),
                report.candidates().stream().map(CandidateLayers::candidate).toList());
    }

    private static Feature candidate(ProposedReach proposed) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("candidate", Attribute.of(proposed.name()));
        facts.put("rank", Attribute.of(proposed.rank()));
        facts.put("score", Attribute.of(tenth(proposed.score().points())));
        facts.put("score_parts", Attribute.of(parts(proposed.score())));
        facts.put("stream", Attribute.of(proposed.reach().stream()));
        facts.put("water", Attribute.of(proposed.water()));
        facts.put("catchment", Attribute.of(proposed.catchment()));
        facts.put(
                "start_chainage_m",
                Attribute.of(millimetre(proposed.reach().start().chainageM())));
        facts.put("from_mouth_m", Attribute.of(millimetre(proposed.fromMouthM())));
        facts.put("length_m", Attribute.of(proposed.reach().rule().lengthM()));
        facts.put("ground_low_m", Attribute.of(tenth(proposed.band().lowM())));
        facts.put("ground_high_m", Attribute.of(tenth(proposed.band().highM())));
        known(proposed, facts);
        facts.put("land", Attribute.of(String.join("; ", proposed.land())));
        facts.put("stake_bank", Attribute.of(proposed.reach().stakeBank() == Bank.LEFT ? "left" : "right"));
        facts.put("not_checked", Attribute.of(String.join("; ", proposed.notChecked())));
        return Feature.of(proposed.name(), proposed.reach().line(), facts);
    }

    private static void known(ProposedReach proposed, Map<String, Attribute> facts) {
        proposed.facts()
                .slope()
                .filter(Slope.Fitted.class::isInstance)
                .ifPresent(slope -> facts.put("slope_percent", Attribute.of(((Slope.Fitted) slope).percent())));
        proposed.facts().order().ifPresent(order -> facts.put("strahler", Attribute.of(order)));
        proposed.facts().width().ifPresent(width -> {
            facts.put("width_m", Attribute.of(width.widthM()));
            facts.put("width_basis", Attribute.of(width.basis()));
        });
        proposed.facts().walkIn().ifPresent(walk -> facts.put("walk_in_m", Attribute.of(tenth(walk.lengthM()))));
    }

    /** {@code nearest obstacle 30.0 of 30 (200 m or more along the stream); …}. */
    static String parts(Score score) {
        return score.parts().stream().map(CandidateLayers::part).collect(Collectors.joining("; "));
    }

    static String part(Score.Part part) {
        String points = part.points().isPresent()
                ? String.format(Locale.ROOT, "%.1f", part.points().getAsDouble())
                : "?";
        return String.format(Locale.ROOT, "%s %s of %.0f (%s)", part.name(), points, part.weight(), part.found());
    }

    FeatureLayer stakes() {
        List<Feature> stakes = new ArrayList<>();
        for (ProposedReach proposed : report.candidates()) {
            proposed.reach().stakes().forEach(stake -> stakes.add(stake(proposed, stake)));
        }
        return layer(
                "stakes",
                Kind.POINT,
                List.of(
                        Field.text("stake"),
                        Field.text("candidate"),
                        Field.decimal("upstream_m"),
                        Field.decimal("chainage_m"),
                        Field.decimal("east_m"),
                        Field.decimal("north_m"),
                        Field.decimal("uncertainty_m")),
                stakes);
    }

    private Feature stake(ProposedReach proposed, Stake stake) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("stake", Attribute.of(stake.name()));
        facts.put("candidate", Attribute.of(proposed.name()));
        facts.put("upstream_m", Attribute.of(stake.upstreamM()));
        facts.put("chainage_m", Attribute.of(millimetre(stake.chainageM())));
        facts.put("east_m", Attribute.of(millimetre(stake.at().eastM())));
        facts.put("north_m", Attribute.of(millimetre(stake.at().northM())));
        facts.put("uncertainty_m", Attribute.of(uncertaintyM));
        return Feature.of(
                stake.name(),
                SHAPES.createPoint(new Coordinate(stake.at().eastM(), stake.at().northM())),
                facts);
    }

    FeatureLayer rejected() {
        List<Feature> strips = new ArrayList<>();
        for (RejectedStrip strip : report.rejected()) {
            Map<String, Attribute> facts = new LinkedHashMap<>();
            facts.put("stream", Attribute.of(strip.stream()));
            facts.put("from_m", Attribute.of(millimetre(strip.fromM())));
            facts.put("to_m", Attribute.of(millimetre(strip.toM())));
            facts.put("length_m", Attribute.of(millimetre(strip.lengthM())));
            facts.put("first_reason", Attribute.of(strip.reasons().get(0).group()));
            facts.put(
                    "reasons",
                    Attribute.of(strip.reasons().stream().map(Reason::sentence).collect(Collectors.joining("; "))));
            strips.add(Feature.of(Integer.toString(strips.size() + 1), strip.line(), facts));
        }
        return layer(
                "rejected",
                Kind.LINESTRING,
                List.of(
                        Field.text("stream"),
                        Field.decimal("from_m"),
                        Field.decimal("to_m"),
                        Field.decimal("length_m"),
                        Field.text("first_reason"),
                        Field.text("reasons")),
                strips);
    }

    private FeatureLayer layer(String name, Kind kind, List<Field> fields, List<Feature> features) {
        return new FeatureLayer(new LayerShape(name, crs, kind, fields), features);
    }

    private static double millimetre(double lengthM) {
        return Math.round(lengthM * 1000) / 1000.0;
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
