package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.MetricPoint;

class StreamNetworkTest {

    static LineString line(String wkt) {
        try {
            return (LineString) new WKTReader().read(wkt);
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    static StreamLine stream(String code, String wkt) {
        return new StreamLine(code, Optional.of("Name of " + code), code, line(wkt));
    }

    private static final StreamNetwork CORNER =
            new StreamNetwork(List.of(stream("COR", "LINESTRING (0 100, 100 100, 100 0)")));

    @Test
    void measuresToTheNearestSegmentNotTheNearestVertex() {
        // The nearest vertex is the corner at 100 m; the nearest point of the line lies at 60 m.
        assertThat(CORNER.chainageM("COR", new MetricPoint(60, 70))).isEqualTo(60, within(1e-9));
        assertThat(CORNER.fromMouthM("COR", new MetricPoint(60, 130))).isEqualTo(140, within(1e-9));
    }

    @Test
    void equallyNearPointsGoToTheSmallerChainage() {
        assertThat(CORNER.chainageM("COR", new MetricPoint(70, 70))).isEqualTo(70, within(1e-9));
    }

    @Test
    void aChainageOutsideTheLineIsAnError() {
        assertThat(CORNER.at("COR", 200)).isEqualTo(new MetricPoint(100, 0));
        assertThatThrownBy(() -> CORNER.at("COR", 200.001)).hasMessageContaining("outside the line, 0 to 200.0 m");
        assertThatThrownBy(() -> CORNER.at("COR", -0.001)).hasMessageContaining("outside the line");
        assertThatThrownBy(() -> CORNER.at("COR", Double.NaN)).hasMessageContaining("outside the line");
    }

    @Test
    void repeatedVerticesChangeNothing() {
        LineMeasure measure = new LineMeasure(line("LINESTRING (0 0, 0 0, 50 0, 50 0, 100 0, 100 0)"));

        assertThat(measure.at(0)).isEqualTo(new MetricPoint(0, 0));
        assertThat(measure.at(50)).isEqualTo(new MetricPoint(50, 0));
        assertThat(measure.at(100)).isEqualTo(new MetricPoint(100, 0));
        assertThat(measure.beside(100, 3)).isEqualTo(new MetricPoint(100, 3));
    }

    @Test
    void leftAndRightAreThoseOfSomeoneLookingDownstream() {
        LineMeasure east = new LineMeasure(line("LINESTRING (0 0, 100 0)"));

        assertThat(east.foot(new MetricPoint(50, 4)).leftM()).isEqualTo(4);
        assertThat(east.foot(new MetricPoint(50, -4)).leftM()).isEqualTo(-4);
        assertThat(east.beside(50, 4)).isEqualTo(new MetricPoint(50, 4));
    }

    @Test
    void cutsAStretchInEitherDirection() {
        assertThat(CORNER.between("COR", 90, 110).toText()).isEqualTo("LINESTRING (90 100, 100 100, 100 90)");
        assertThat(CORNER.between("COR", 110, 90).toText()).isEqualTo("LINESTRING (100 90, 100 100, 90 100)");
    }

    @Test
    void theNearestLineAtTheSameDistanceIsTheFirstByCode() {
        StreamNetwork two = new StreamNetwork(
                List.of(stream("B", "LINESTRING (0 10, 100 10)"), stream("A", "LINESTRING (0 -10, 100 -10)")));

        assertThat(two.nearest(new MetricPoint(50, 0)).orElseThrow().stream().code())
                .isEqualTo("A");
        assertThat(two.byDistance(new MetricPoint(50, 4)))
                .extracting(candidate ->
                        candidate.stream().code() + " " + candidate.foot().distanceM())
                .containsExactly("B 6.0", "A 14.0");
        assertThat(new StreamNetwork(List.of()).nearest(new MetricPoint(0, 0))).isEmpty();
    }

    @Test
    void junctionsAreFoundAtMidLineAndOrderedAcross() {
        StreamNetwork tree = new StreamNetwork(List.of(
                stream("MAIN", "LINESTRING (0 0, 100 0, 200 0)"), stream("TRIB", "LINESTRING (100 80, 100 0.2)")));

        assertThat(tree.junctions())
                .containsExactly(new Junction(
                        new MetricPoint(100, 0.2),
                        List.of(new Junction.Arm("MAIN", 100), new Junction.Arm("TRIB", 79.8))));
        assertThat(tree.orders())
                .containsExactly(
                        new OrderedPiece("MAIN", 0, 100, 1),
                        new OrderedPiece("MAIN", 100, 200, 2),
                        new OrderedPiece("TRIB", 0, 79.8, 1));
    }

    @Test
    void twoLinesOfOneCodeAreABug() {
        assertThatThrownBy(() -> new StreamNetwork(
                        List.of(stream("A", "LINESTRING (0 0, 1 0)"), stream("A", "LINESTRING (0 0, 1 0)"))))
                .hasMessage("Two stream lines are called A");
    }
}
