package org.wadeplan.geo.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.reference.ReferenceTable;

/** On the un-densified lines; the winding demo lines are longer, and DemoStreamsTest checks those apart. */
class ControlLinesReferenceTest {

    private static final StreamNetwork CONTROL = new StreamNetwork(DemoPlaces.streams().stream()
            .map(line -> new StreamLine(
                    line.code(),
                    Optional.of(line.name()),
                    line.code(),
                    DemoGeometry.SHAPES.createLineString(line.vertices().toArray(new Coordinate[0]))))
            .toList());

    static List<ReferenceTable.Row> lengths() {
        return ReferenceTable.rows("network/control_lengths.csv");
    }

    static List<ReferenceTable.Row> chainages() {
        return ReferenceTable.rows("network/control_chainages.csv");
    }

    @ParameterizedTest
    @MethodSource("lengths")
    void controlLinesHaveTheirLengths(ReferenceTable.Row row) {
        assertThat(CONTROL.line(row.text("stream")).orElseThrow().lengthM())
                .isEqualTo(row.number("length_m"), within(0.51));
    }

    @ParameterizedTest
    @MethodSource("chainages")
    void sitesLieAtTheirDistancesFromTheMouth(ReferenceTable.Row row) {
        String site = row.text("site");
        Coordinate at = Objects.requireNonNull(DemoPlaces.sites().get(site));

        assertThat(CONTROL.fromMouthM(DemoPlaces.streamOf(site), new MetricPoint(at.x, at.y)))
                .isEqualTo(row.number("from_mouth_m"), within(0.51));
    }
}
