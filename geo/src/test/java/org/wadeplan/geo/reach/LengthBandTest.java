package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

class LengthBandTest {

    private static LineString line(Coordinate... vertices) {
        return new GeometryFactory().createLineString(vertices);
    }

    private static LineString straight(double lengthM, int steps) {
        Coordinate[] vertices = new Coordinate[steps + 1];
        for (int i = 0; i <= steps; i++) {
            vertices[i] = new Coordinate(lengthM * i / steps, 0);
        }
        return line(vertices);
    }

    private static Optional<MeanWidth> width(double widthM) {
        return Optional.of(new MeanWidth(widthM, "measured at the site"));
    }

    /** The published mean shortfall of 11.1 %: nafm.10793. */
    @Test
    void aFinelyDrawnStraightLineHasThePublishedMeanAsItsUpperEnd() {
        LengthBand band = LengthBand.of(StretchShape.of(straight(150, 50)), width(4));

        assertThat(band.words()).isEqualTo("about 150\u2013169 m on the ground; lay it out by tape");
        assertThat(band.highM()).isEqualTo(150 / (1 - 0.111), within(1e-9));
    }

    /** Two standard deviations of 4.1 % more: nafm.10793. */
    @Test
    void aLineTooCoarseToShowBendsIsWidenedByTwoStandardDeviations() {
        LengthBand band = LengthBand.of(StretchShape.of(straight(150, 1)), width(4));

        assertThat(band.highM()).isEqualTo(150 / (1 - 0.111 - 0.082), within(1e-9));
        assertThat(LengthBand.of(StretchShape.of(straight(150, 50)), Optional.empty())
                        .highM())
                .as("where no width is known, nothing says that the line is fine enough")
                .isEqualTo(150 / (1 - 0.111 - 0.082), within(1e-9));
    }

    /** Bends of 11 widths of 4 m: 44 m. Eight vertices a bend, 5.5 m; two, 22 m. */
    @ParameterizedTest
    @CsvSource({"5.5, 0", "5.4, 0", "13.75, 0.5", "22, 1", "40, 1"})
    void coarsenessRunsFromEightVerticesABendToTwo(double spacingM, double coarseness) {
        assertThat(LengthBand.coarseness(new StretchShape(150, 150, spacingM, 0), 4))
                .isEqualTo(coarseness, within(1e-9));
    }

    /** A circle's own length is known, so what rounding adds to its chords can be checked: 2 pi r. */
    @ParameterizedTest
    @CsvSource({"12", "24", "90"})
    void roundingThroughTheVerticesOfACircleGivesTheCirclesLength(int chords) {
        Coordinate[] vertices = new Coordinate[chords * 3 + 1];
        for (int i = 0; i < vertices.length; i++) {
            double angle = 2 * Math.PI * i / chords;
            vertices[i] = new Coordinate(100 * Math.cos(angle), 100 * Math.sin(angle));
        }
        StretchShape shape = StretchShape.of(line(vertices));
        double arcs = (double) (vertices.length - 2) / (vertices.length - 1);
        double trueShare = (2 * Math.PI * 300) / shape.lengthM() - 1;

        // The first and last half chord have no neighbour to turn from.
        assertThat(shape.roundingShare()).isEqualTo(trueShare * arcs, within(1e-9));
    }

    @Test
    void sinuosityIsLengthOverChord() {
        StretchShape shape = StretchShape.of(line(new Coordinate(0, 0), new Coordinate(30, 40), new Coordinate(60, 0)));

        assertThat(shape.sinuosity()).isEqualTo(100.0 / 60, within(1e-12));
        assertThat(shape.vertexSpacingM()).isEqualTo(50);
    }

    @Test
    void aStretchOfALineIsMeasuredAsItsShapeIs() {
        LineString whole =
                line(new Coordinate(0, 0), new Coordinate(30, 40), new Coordinate(60, 0), new Coordinate(90, 10));
        LineSetBuilder builder = new LineSetBuilder();
        builder.add("S", whole);
        LineSet lines = builder.build();

        assertThat(StretchShape.of(lines, 0, 10, 110)).isEqualTo(StretchShape.of(lines.between(0, 10, 110)));
    }

    @Test
    void saysWhatIsMeasuredAndWhatIsAssumed() {
        LengthBand band = LengthBand.of(StretchShape.of(straight(150, 10)), width(4));

        assertThat(band.measured())
                .containsExactly(
                        "150.0 m along the line",
                        "a vertex every 15.0 m",
                        "sinuosity 1.00",
                        "bends rounded through the vertices add 0.0 %");
        assertThat(band.assumed().get(0)).contains("nafm.10793");
        assertThat(band.assumed().get(1)).startsWith("bends of 44 m, 11 widths of 4.0 m (measured at the site)");
    }
}
