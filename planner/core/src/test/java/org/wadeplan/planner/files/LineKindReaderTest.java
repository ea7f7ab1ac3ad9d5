package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.planner.round.LineKindSpan;

class LineKindReaderTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private static LineString line(double fromNorth, double toNorth) {
        return SHAPES.createLineString(new Coordinate[] {new Coordinate(0, fromNorth), new Coordinate(0, toNorth)});
    }

    private static Feature feature(String id, String kind, LineString line) {
        return Feature.of(id, line, Map.of("code", Attribute.of("BRN"), "KIND", Attribute.of(kind)));
    }

    /** One stream of three features; the lake is drawn against the flow. */
    @Test
    void aFeatureThatIsPartOfItsStreamGivesTheStretchThatItCovers() {
        FeatureLayer layer = new FeatureLayer(
                new LayerShape("streams", Optional.empty(), LayerShape.Kind.LINESTRING, List.of()),
                List.of(
                        feature("1", "stream", line(1000, 700)),
                        feature("2", "Lake", line(400, 700)),
                        feature("3", "pipe", line(400, 0))));
        StreamNetwork network =
                new StreamNetwork(List.of(new StreamLine("BRN", Optional.empty(), "BRN", line(1000, 0))));

        assertThat(LineKindReader.read(layer, network))
                .containsExactly(new LineKindSpan("BRN", "lake", 300, 600), new LineKindSpan("BRN", "pipe", 600, 1000));
    }
}
