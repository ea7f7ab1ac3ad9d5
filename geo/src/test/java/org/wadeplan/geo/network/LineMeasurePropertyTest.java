package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachLayer;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.geo.reach.SiteStart;
import org.wadeplan.geo.reach.SubReach;

class LineMeasurePropertyTest {

    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", SourcePlace.file("x")).value().orElseThrow();

    /** Wanders eastward, 4 to 40 steps of 10 to 60 m, so that it never meets itself. */
    @Provide
    Arbitrary<LineString> lines() {
        Arbitrary<Coordinate> step = Combinators.combine(
                        Arbitraries.doubles().between(10, 40),
                        Arbitraries.doubles().between(-45, 45))
                .as(Coordinate::new);
        return step.list().ofMinSize(20).ofMaxSize(40).map(steps -> {
            List<Coordinate> vertices = new ArrayList<>(List.of(new Coordinate(500000, 5100000)));
            for (Coordinate by : steps) {
                Coordinate last = vertices.get(vertices.size() - 1);
                vertices.add(new Coordinate(last.x + by.x, last.y + by.y));
            }
            return new GeometryFactory().createLineString(vertices.toArray(new Coordinate[0]));
        });
    }

    @Property(tries = 200, seed = "20270906")
    void subReachesTileTheReach(@ForAll("lines") LineString line, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        StreamNetwork network = new StreamNetwork(List.of(new StreamLine("S", java.util.Optional.empty(), "S", line)));
        double startM = 150 + share * (network.measure("S").lengthM() - 150);
        Reach reach = new ReachLayer(network, UTM27, new ReachRule(150, 10, "common practice"))
                .lay(new SiteStart("X", "S", "XX01", network.at("S", startM), Bank.LEFT), SourcePlace.file("x"))
                .value()
                .orElseThrow();

        double belowM = reach.start().chainageM();
        for (SubReach piece : reach.subReaches()) {
            assertThat(piece.downstream().chainageM()).isEqualTo(belowM);
            belowM = piece.upstream().chainageM();
            assertThat(network.between(
                                    "S",
                                    piece.downstream().chainageM(),
                                    piece.upstream().chainageM())
                            .getLength())
                    .isEqualTo(15, within(0.01));
        }
        assertThat(reach.line().getLength()).isEqualTo(150, within(1e-6));
        assertThat(belowM).isEqualTo(reach.end().chainageM());
    }

    @Property(tries = 200, seed = "20270906")
    void reversingALineMirrorsChainage(
            @ForAll("lines") LineString line, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        LineMeasure down = new LineMeasure(line);
        LineMeasure up = new LineMeasure(line.reverse());
        MetricPoint at = down.at(share * down.lengthM());

        assertThat(up.at((1 - share) * up.lengthM()).distanceM(at)).isLessThan(1e-6);
        assertThat(down.foot(at).chainageM() + up.foot(at).chainageM()).isEqualTo(down.lengthM(), within(1e-6));
        MetricPoint beside = down.beside(share * down.lengthM(), 3);
        assertThat(up.beside((1 - share) * up.lengthM(), -3).distanceM(beside))
                .as("left of one is right of the other, except at a bend")
                .matches(distance -> distance < 1e-6 || isVertex(line, at));
    }

    private static boolean isVertex(LineString line, MetricPoint at) {
        for (Coordinate vertex : line.getCoordinates()) {
            if (at.distanceM(new MetricPoint(vertex.x, vertex.y)) < 1e-6) {
                return true;
            }
        }
        return false;
    }

    @Property(tries = 100, seed = "20270906")
    void theFootIsAtLeastAsNearAsEveryVertexAndEveryPointBetween(
            @ForAll("lines") LineString line,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = -80, max = 80) double offM) {
        LineMeasure measure = new LineMeasure(line);
        MetricPoint place = measure.beside(share * measure.lengthM(), offM);
        LineMeasure.Foot foot = measure.foot(place);

        assertThat(measure.at(foot.chainageM()).distanceM(foot.at())).isLessThan(1e-6);
        for (Coordinate vertex : line.getCoordinates()) {
            assertThat(foot.distanceM())
                    .isLessThanOrEqualTo(place.distanceM(new MetricPoint(vertex.x, vertex.y)) + 1e-9);
        }
        for (int i = 0; i <= 100; i++) {
            assertThat(foot.distanceM())
                    .isLessThanOrEqualTo(place.distanceM(measure.at(measure.lengthM() * i / 100)) + 1e-9);
        }
    }
}
