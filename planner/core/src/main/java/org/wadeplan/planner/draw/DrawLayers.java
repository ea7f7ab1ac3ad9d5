package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.network.StreamNetwork;

/** Drawn places and their reaches as map layers in the round's metric system. */
final class DrawLayers {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final CoordinateSystem crs;
    private final StreamNetwork network;
    private final RoundDraw draw;

    DrawLayers(CoordinateSystem crs, StreamNetwork network, RoundDraw draw) {
        this.crs = crs;
        this.network = network;
        this.draw = draw;
    }

    /**
     * Columns place, role, turn, use, stands_in_for, loss, stratum, stream, chainage_m, from_mouth_m, unit_length_m,
     * inclusion_probability, design_weight_m, weight_m, land.
     */
    FeatureLayer places() {
        List<Field> fields = List.of(
                Field.text("place"),
                Field.text("role"),
                Field.whole("turn"),
                Field.text("use"),
                Field.text("stands_in_for"),
                Field.text("loss"),
                Field.text("stratum"),
                Field.text("stream"),
                Field.decimal("chainage_m"),
                Field.decimal("from_mouth_m"),
                Field.decimal("unit_length_m"),
                Field.decimal("inclusion_probability"),
                Field.decimal("design_weight_m"),
                Field.decimal("weight_m"),
                Field.text("land"));
        return layer(
                "places",
                Kind.POINT,
                fields,
                draw.places().stream().map(DrawLayers::feature).toList());
    }

    /** Columns place, use, stream, start_chainage_m, end_chainage_m, for each place where a reach fits on. */
    FeatureLayer reaches() {
        List<Feature> features = new ArrayList<>();
        for (DrawnPlace place : draw.places()) {
            if (place.reachStartM().isPresent() && place.reachEndM().isPresent()) {
                features.add(reach(
                        place,
                        place.reachStartM().getAsDouble(),
                        place.reachEndM().getAsDouble()));
            }
        }
        return layer(
                "reaches",
                Kind.LINESTRING,
                List.of(
                        Field.text("place"),
                        Field.text("use"),
                        Field.text("stream"),
                        Field.decimal("start_chainage_m"),
                        Field.decimal("end_chainage_m")),
                features);
    }

    private FeatureLayer layer(String name, Kind kind, List<Field> fields, List<Feature> features) {
        return new FeatureLayer(
                new LayerShape(name, Optional.of(StatedSystem.code(crs.code())), kind, fields), features);
    }

    private static Feature feature(DrawnPlace place) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("place", Attribute.of(place.code()));
        facts.put("role", Attribute.of(place.role()));
        facts.put("turn", Attribute.of(place.turn()));
        facts.put("use", Attribute.of(place.use()));
        place.standsInFor().ifPresent(code -> facts.put("stands_in_for", Attribute.of(code)));
        loss(place).ifPresent(words -> facts.put("loss", Attribute.of(words)));
        facts.put("stratum", Attribute.of(place.stratum()));
        facts.put("stream", Attribute.of(place.stream()));
        facts.put("chainage_m", Attribute.of(millimetres(place.chainageM())));
        facts.put("from_mouth_m", Attribute.of(millimetres(place.fromMouthM())));
        facts.put("unit_length_m", Attribute.of(place.unitLengthM()));
        facts.put("inclusion_probability", Attribute.of(place.inclusionProbability()));
        facts.put("design_weight_m", Attribute.of(millimetres(place.designWeightM())));
        place.weightM().ifPresent(weightM -> facts.put("weight_m", Attribute.of(millimetres(weightM))));
        facts.put("land", Attribute.of(String.join("; ", place.land())));
        return Feature.of(
                place.code(),
                SHAPES.createPoint(new Coordinate(place.at().eastM(), place.at().northM())),
                facts);
    }

    private Feature reach(DrawnPlace place, double startM, double endM) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("place", Attribute.of(place.code()));
        facts.put("use", Attribute.of(place.use()));
        facts.put("stream", Attribute.of(place.stream()));
        facts.put("start_chainage_m", Attribute.of(millimetres(startM)));
        facts.put("end_chainage_m", Attribute.of(millimetres(endM)));
        return Feature.of(place.code(), network.between(place.stream(), startM, endM), facts);
    }

    /** {@code denied: owner refused by letter} */
    static Optional<String> loss(DrawnPlace place) {
        return place.lossGround()
                .map(ground -> String.format(
                        Locale.ROOT, "%s: %s", ground, place.lossReason().orElse("")));
    }

    private static double millimetres(double lengthM) {
        return Math.round(lengthM * 1000) / 1000.0;
    }
}
