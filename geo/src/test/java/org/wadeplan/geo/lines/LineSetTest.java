package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;

class LineSetTest {

    private static final double[] BEND = {0, 0, 3, 4, 3, 4, 3, 10};

    private static LineString line(double... eastNorth) {
        Coordinate[] vertices = new Coordinate[eastNorth.length / 2];
        for (int i = 0; i < vertices.length; i++) {
            vertices[i] = new Coordinate(eastNorth[2 * i], eastNorth[2 * i + 1]);
        }
        return new GeometryFactory().createLineString(vertices);
    }

    private static double[] vertices(LineString line) {
        return Arrays.stream(line.getCoordinates())
                .flatMapToDouble(at -> DoubleStream.of(at.x, at.y))
                .toArray();
    }

    private static LineSet bend() {
        LineSetBuilder builder = new LineSetBuilder();
        builder.add("before", line(0, 0, 1, 0));
        builder.add("bend", BEND, 4);
        return builder.build();
    }

    @Test
    void aVertexEqualToTheOneBeforeIsLeftOutAndChainageGrowsAlongTheLine() {
        LineSet lines = bend();

        assertThat(lines.lineCount()).isEqualTo(2);
        assertThat(lines.firstVertex(1)).isEqualTo(2);
        assertThat(lines.endVertex(1)).isEqualTo(5);
        assertThat(new double[] {lines.chainageM(2), lines.chainageM(3), lines.chainageM(4)})
                .containsExactly(0, 5, 11);
        assertThat(lines.lengthM(1)).isEqualTo(11);
        assertThat(vertices(lines.shape(1))).containsExactly(0, 0, 3, 4, 3, 10);
    }

    @Test
    void aLineWithoutLengthIsNotAdded() {
        LineSetBuilder builder = new LineSetBuilder();

        assertThat(builder.add("dot", line(5, 5, 5, 5))).isFalse();
        assertThat(builder.add("nothing", new double[0], 0)).isFalse();
        assertThat(builder.build().lineCount()).isZero();
    }

    @Test
    void aLineWithAVertexThatIsNoPlaceIsRefusedAndLeavesNothingBehind() {
        LineSetBuilder builder = new LineSetBuilder();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.add("broken", new double[] {7, 7, 8, Double.NaN}, 2));
        builder.add("bend", BEND, 4);

        assertThat(vertices(builder.build().shape(0))).containsExactly(0, 0, 3, 4, 3, 10);
    }

    @Test
    void zeroHasOneSignSoThatEndsWhichCoincideAreEqual() {
        LineSetBuilder builder = new LineSetBuilder();
        builder.add("minus", new double[] {-0.0, -0.0, 1, 1}, 2);

        assertThat(builder.build().at(0, 0)).isEqualTo(new MetricPoint(0, 0));
    }

    @Test
    void lengthsTooLargeOrTooSmallToSquareAreStillMeasured() {
        LineSetBuilder builder = new LineSetBuilder();
        builder.add("large", new double[] {0, 0, 3e200, 4e200}, 2);
        builder.add("small", new double[] {0, 0, 3e-200, 4e-200}, 2);
        LineSet lines = builder.build();

        assertThat(lines.lengthM(0)).isCloseTo(5e200, withinPercentage(1e-10));
        assertThat(lines.lengthM(1)).isCloseTo(5e-200, withinPercentage(1e-10));
    }

    @Test
    void aChainageFallsOnItsPointAndAVertexBelongsToTheSegmentBeforeIt() {
        LineSet lines = bend();

        assertThat(lines.at(1, 7)).isEqualTo(new MetricPoint(3, 6));
        assertThat(lines.segmentEnd(1, 5)).isEqualTo(3);
        assertThat(lines.segmentEnd(1, 0)).isEqualTo(3);
        assertThat(lines.segmentEnd(1, 11)).isEqualTo(4);
    }

    @Test
    void aChainageOutsideItsLineIsRefused() {
        LineSet lines = bend();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> lines.at(1, 11.01))
                .withMessageContaining("bend");
        assertThatIllegalArgumentException().isThrownBy(() -> lines.at(1, -0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> lines.at(1, Double.NaN));
    }

    @Test
    void aStretchRunsTheWayItIsAskedFor() {
        LineSet lines = bend();

        assertThat(vertices(lines.between(1, 2.5, 8))).containsExactly(1.5, 2, 3, 4, 3, 7);
        assertThat(vertices(lines.between(1, 8, 2.5))).containsExactly(3, 7, 3, 4, 1.5, 2);
        assertThatIllegalArgumentException().isThrownBy(() -> lines.between(1, 4, 4));
    }
}
