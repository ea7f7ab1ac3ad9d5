package org.wadeplan.planner.pack.track;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.planner.round.Round;

/** Reaches, stakes and streams as map layers in the round's metric system. Codes and measures only: no names of people. */
public final class MapLayers {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final Round round;
    private final List<Reach> reaches;

    public MapLayers(Round round, List<Reach> reaches) {
        this.round = round;
        this.reaches = List.copyOf(reaches);
    }

    /** Columns site, stream, start_chainage_m, end_chainage_m, length_m, stake_bank. */
    public FeatureLayer reaches() {
        return layer(
                "reaches",
                Kind.LINESTRING,
                List.of(
                        Field.text("site"),
                        Field.text("stream"),
                        Field.decimal("start_chainage_m"),
                        Field.decimal("end_chainage_m"),
                        Field.decimal("length_m"),
                        Field.text("stake_bank")),
                reaches.stream().map(MapLayers::reach).toList());
    }

    /** Columns stake, site, letter, upstream_m, chainage_m, east_m, north_m, lat_deg, lon_deg, uncertainty_m. */
    public FeatureLayer stakes() {
        List<Feature> features = new ArrayList<>();
        for (Reach reach : reaches) {
            for (int i = 0; i < reach.stakes().size(); i++) {
                features.add(stake(reach, i));
            }
        }
        return layer(
                "stakes",
                Kind.POINT,
                List.of(
                        Field.text("stake"),
                        Field.text("site"),
                        Field.text("letter"),
                        Field.decimal("upstream_m"),
                        Field.decimal("chainage_m"),
                        Field.decimal("east_m"),
                        Field.decimal("north_m"),
                        Field.decimal("lat_deg"),
                        Field.decimal("lon_deg"),
                        Field.decimal("uncertainty_m")),
                features);
    }

    /** Columns code, name, catchment, flow. */
    public FeatureLayer streams() {
        return layer(
                "streams",
                Kind.LINESTRING,
                List.of(Field.text("code"), Field.text("name"), Field.text("catchment"), Field.text("flow")),
                round.terrain().network().lines().stream()
                        .map(MapLayers::stream)
                        .toList());
    }

    private FeatureLayer layer(String name, Kind kind, List<Field> fields, List<Feature> features) {
        return new FeatureLayer(
                new LayerShape(
                        name,
                        Optional.of(StatedSystem.code(round.terrain().crs().code())),
                        kind,
                        fields),
                features);
    }

    private static Feature reach(Reach reach) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("site", Attribute.of(reach.site()));
        facts.put("stream", Attribute.of(reach.stream()));
        facts.put("start_chainage_m", Attribute.of(millimetres(reach.start().chainageM())));
        facts.put("end_chainage_m", Attribute.of(millimetres(reach.end().chainageM())));
        facts.put("length_m", Attribute.of(reach.rule().lengthM()));
        facts.put("stake_bank", Attribute.of(reach.stakeBank().name().toLowerCase(Locale.ROOT)));
        return Feature.of(reach.site(), reach.line(), facts);
    }

    private Feature stake(Reach reach, int index) {
        Stake stake = reach.stakes().get(index);
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("stake", Attribute.of(stake.name()));
        facts.put("site", Attribute.of(reach.site()));
        if (index < reach.subReaches().size()) {
            facts.put(
                    "letter",
                    Attribute.of(String.valueOf(reach.subReaches().get(index).letter())));
        }
        facts.put("upstream_m", Attribute.of(stake.upstreamM()));
        facts.put("chainage_m", Attribute.of(millimetres(stake.chainageM())));
        facts.put("east_m", Attribute.of(millimetres(stake.at().eastM())));
        facts.put("north_m", Attribute.of(millimetres(stake.at().northM())));
        facts.put("lat_deg", Attribute.of(sevenPlaces(stake.lonLat().latDeg())));
        facts.put("lon_deg", Attribute.of(sevenPlaces(stake.lonLat().lonDeg())));
        facts.put("uncertainty_m", Attribute.of(round.header().stakeUncertaintyM()));
        return Feature.of(
                stake.name(),
                SHAPES.createPoint(new Coordinate(stake.at().eastM(), stake.at().northM())),
                facts);
    }

    private static Feature stream(StreamLine stream) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("code", Attribute.of(stream.code()));
        stream.name().ifPresent(name -> facts.put("name", Attribute.of(name)));
        facts.put("catchment", Attribute.of(stream.catchment()));
        facts.put("flow", Attribute.of("source-to-mouth"));
        return Feature.of(stream.code(), stream.line(), facts);
    }

    private static double millimetres(double lengthM) {
        return Math.round(lengthM * 1000) / 1000.0;
    }

    private static double sevenPlaces(double angleDeg) {
        return Math.round(angleDeg * 1e7) / 1e7;
    }
}
