package org.wadeplan.geo.lines;

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
import org.locationtech.jts.geom.Point;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.CutRule.From;
import org.wadeplan.geo.lines.SegmentIndex.Snap;

class ReachCutPropertyTest {

    private static final double ROUNDING_M = 1e-7;

    @Provide
    Arbitrary<LineSet> lines() {
        return LineArbitraries.sets();
    }

    @Provide
    Arbitrary<CutRule> rules() {
        return Combinators.combine(
                        Arbitraries.doubles().between(5, 200),
                        Arbitraries.integers().between(1, 12),
                        Arbitraries.of(From.class))
                .as(CutRule::new);
    }

    @Property(tries = 300, seed = "20270906")
    void wholeReachesAndTheirSubReachesTileEachLineFromItsEnd(
            @ForAll("lines") LineSet lines, @ForAll("rules") CutRule rule) {
        ReachCut cut = new ReachCut(lines, rule);

        for (int line = 0; line < lines.lineCount(); line++) {
            int reaches = cut.endReach(line) - cut.firstReach(line);
            double leftM = lines.lengthM(line) - reaches * rule.lengthM();
            assertThat(leftM).isBetween(-ROUNDING_M, rule.lengthM());
            double belowM = 0;
            for (int reach = cut.firstReach(line); reach < cut.endReach(line); reach++) {
                assertThat(cut.line(reach)).isEqualTo(line);
                assertThat(fromEndM(cut, line, reach, 0)).isEqualTo(belowM, within(ROUNDING_M));
                for (int station = 1; station <= rule.subReaches(); station++) {
                    belowM += rule.subReachM();
                    assertThat(fromEndM(cut, line, reach, station)).isEqualTo(belowM, within(ROUNDING_M));
                }
            }
        }
    }

    private static double fromEndM(ReachCut cut, int line, int reach, int station) {
        double atM = cut.stationM(reach, station);
        return cut.rule().from() == From.LAST_VERTEX ? cut.lines().lengthM(line) - atM : atM;
    }

    @Property(tries = 200, seed = "20270906")
    void everyStationLiesAtItsChainage(@ForAll("lines") LineSet lines, @ForAll("rules") CutRule rule) {
        ReachCut cut = new ReachCut(lines, rule);

        for (int reach = 0; reach < cut.reachCount(); reach++) {
            for (int station = 0; station <= rule.subReaches(); station++) {
                MetricPoint at = lines.at(cut.line(reach), cut.stationM(reach, station));
                assertThat(cut.station(reach, station).distanceM(at)).isLessThan(ROUNDING_M);
            }
        }
    }

    @Property(tries = 200, seed = "20270906")
    void turningLinesRoundMirrorsChainagesAndLeavesStationsWhereTheyAre(
            @ForAll("lines") LineSet lines, @ForAll("rules") CutRule rule) {
        From other = rule.from() == From.LAST_VERTEX ? From.FIRST_VERTEX : From.LAST_VERTEX;
        ReachCut cut = new ReachCut(lines, rule);
        ReachCut mirrored =
                new ReachCut(LineArbitraries.reversed(lines), new CutRule(rule.lengthM(), rule.subReaches(), other));

        assertThat(mirrored.reachCount()).isEqualTo(cut.reachCount());
        for (int reach = 0; reach < cut.reachCount(); reach++) {
            double lengthM = lines.lengthM(cut.line(reach));
            for (int station = 0; station <= rule.subReaches(); station++) {
                assertThat(mirrored.stationM(reach, station))
                        .isEqualTo(lengthM - cut.stationM(reach, station), within(ROUNDING_M));
                assertThat(mirrored.station(reach, station).distanceM(cut.station(reach, station)))
                        .isLessThan(ROUNDING_M);
            }
        }
    }

    @Property(tries = 200, seed = "20270906")
    void turningLinesRoundMirrorsWhereAPlaceFalls(
            @ForAll("lines") LineSet lines,
            @ForAll @DoubleRange(min = -300, max = 300) double eastM,
            @ForAll @DoubleRange(min = -300, max = 300) double northM) {
        MetricPoint place = new MetricPoint(eastM, northM);
        List<Snap> found = new PackedSegmentIndex(lines).nearest(place, 1, 1e6);
        LineSet turned = LineArbitraries.reversed(lines);
        List<Snap> mirrored = new PackedSegmentIndex(turned).nearest(place, 1, 1e6);

        assertThat(mirrored).hasSameSizeAs(found);
        for (int i = 0; i < found.size(); i++) {
            assertThat(mirrored.get(i).distanceM()).isEqualTo(found.get(i).distanceM(), within(ROUNDING_M));
            // Where two places are equally near, turning the line may choose the other one.
            MetricPoint at = turned.at(mirrored.get(i).line(), mirrored.get(i).chainageM());
            assertThat(at.distanceM(place)).isEqualTo(found.get(i).distanceM(), within(ROUNDING_M));
            if (at.distanceM(found.get(i).at()) < ROUNDING_M
                    && mirrored.get(i).line() == found.get(i).line()) {
                double fromOtherEndM =
                        lines.lengthM(found.get(i).line()) - mirrored.get(i).chainageM();
                MetricPoint back = lines.at(found.get(i).line(), Math.max(0, fromOtherEndM));
                assertThat(back.distanceM(found.get(i).at())).isLessThan(ROUNDING_M);
            }
        }
    }

    /** JTS measures from the node to each reach as a shape of its own. */
    @Property(tries = 200, seed = "20270906")
    void reachesNearNodesAreThoseThatMeasuringEachOneFinds(
            @ForAll("lines") LineSet lines,
            @ForAll("rules") CutRule rule,
            @ForAll @DoubleRange(min = 0, max = 120) double clearM) {
        ReachCut cut = new ReachCut(lines, rule);
        LineNodes nodes = LineNodes.whereEndsMeet(lines, 1);
        ReachClearance clearance = ReachClearance.straight(cut, new PackedSegmentIndex(lines), nodes, clearM);

        for (int reach = 0; reach < cut.reachCount(); reach++) {
            double nearestM = nearestM(cut, reach, nodes);
            if (Math.abs(nearestM - clearM) < ROUNDING_M) {
                continue;
            }
            assertThat(clearance.isKept(reach)).isEqualTo(nearestM > clearM);
            if (!clearance.isKept(reach)) {
                assertThat(clearance.nearestM(reach)).isEqualTo(nearestM, within(ROUNDING_M));
            }
        }
    }

    private static double nearestM(ReachCut cut, int reach, LineNodes nodes) {
        var shape = cut.lines()
                .between(
                        cut.line(reach),
                        cut.stationM(reach, 0),
                        cut.stationM(reach, cut.rule().subReaches()));
        List<Double> all = new ArrayList<>();
        for (int node = 0; node < nodes.nodeCount(); node++) {
            Point at = new GeometryFactory().createPoint(new Coordinate(nodes.eastM(node), nodes.northM(node)));
            all.add(shape.distance(at));
        }
        return all.stream().mapToDouble(Double::doubleValue).min().orElse(Double.POSITIVE_INFINITY);
    }

    @Property(tries = 200, seed = "20270906")
    void alongTheLineOnlyTheDistanceToTheReachsOwnEndsCounts(
            @ForAll("lines") LineSet lines,
            @ForAll("rules") CutRule rule,
            @ForAll @DoubleRange(min = 0, max = 120) double clearM) {
        ReachCut cut = new ReachCut(lines, rule);
        ReachClearance clearance = ReachClearance.along(cut, LineNodes.whereEndsMeet(lines, 1), clearM);

        for (int reach = 0; reach < cut.reachCount(); reach++) {
            double lengthM = lines.lengthM(cut.line(reach));
            double oneEndM = cut.stationM(reach, 0);
            double otherEndM = cut.stationM(reach, rule.subReaches());
            double nearestM = Math.min(Math.min(oneEndM, otherEndM), lengthM - Math.max(oneEndM, otherEndM));
            assertThat(clearance.isKept(reach)).isEqualTo(nearestM > clearM);
        }
    }
}
