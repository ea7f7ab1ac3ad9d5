package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.SegmentIndex.Snap;

class PackedSegmentIndexPropertyTest {

    @Provide
    Arbitrary<LineSet> lines() {
        return LineArbitraries.sets();
    }

    @Provide
    Arbitrary<MetricPoint> places() {
        Arbitrary<Double> anywhere = Arbitraries.doubles().between(-400, 400);
        Arbitrary<Double> wholeMetres =
                Arbitraries.integers().between(-200, 200).map(Integer::doubleValue);
        Arbitrary<Double> ordinate = Arbitraries.oneOf(anywhere, wholeMetres);
        return Combinators.combine(ordinate, ordinate).as(MetricPoint::new);
    }

    @Provide
    Arbitrary<List<MetricPoint>> manyPlaces() {
        return places().list().ofMinSize(1).ofMaxSize(50);
    }

    @Provide
    Arbitrary<Double> reaches() {
        return Arbitraries.oneOf(
                Arbitraries.just(Double.POSITIVE_INFINITY),
                Arbitraries.doubles().between(0, 150));
    }

    /** A vertex is never chosen because it is one: brute force looks at whole segments. */
    @Property(tries = 600, seed = "20270906")
    void nearestLinesAreThoseOfLookingAtEverySegment(
            @ForAll("lines") LineSet lines,
            @ForAll("places") MetricPoint place,
            @ForAll @IntRange(max = 12) int most,
            @ForAll("reaches") double withinM) {
        List<Snap> found = new PackedSegmentIndex(lines).nearest(place, most, withinM);

        assertThat(found).isEqualTo(BruteForce.nearest(lines, place, most, withinM));
    }

    @Property(tries = 100, seed = "20270906")
    void askingForManyPlacesGivesTheSameAsAskingOneByOne(
            @ForAll("lines") LineSet lines, @ForAll("manyPlaces") List<MetricPoint> places) {
        PackedSegmentIndex index = new PackedSegmentIndex(lines);
        List<List<Snap>> singly =
                places.stream().map(place -> index.nearest(place, 3, 200)).toList();

        assertThat(index.nearestOfEach(places, 3, 200)).isEqualTo(singly);
    }

    @Property(tries = 200, seed = "20270906")
    void linesAddedElsewhereChangeNothingHere(
            @ForAll("lines") LineSet lines, @ForAll("lines") LineSet others, @ForAll("places") MetricPoint place) {
        LineSetBuilder both = new LineSetBuilder();
        LineArbitraries.addMoved(lines, 0, 0, both);
        LineArbitraries.addMoved(others, 50_000, -80_000, both);

        assertThat(new PackedSegmentIndex(both.build()).nearest(place, 4, 5_000))
                .isEqualTo(new PackedSegmentIndex(lines).nearest(place, 4, 5_000));
    }

    @Property(tries = 200, seed = "20270906")
    void aRectangleMeetsTheSegmentsWhoseBoxesItMeets(
            @ForAll("lines") LineSet lines, @ForAll("places") MetricPoint corner, @ForAll("places") MetricPoint other) {
        double west = Math.min(corner.eastM(), other.eastM());
        double east = Math.max(corner.eastM(), other.eastM());
        double south = Math.min(corner.northM(), other.northM());
        double north = Math.max(corner.northM(), other.northM());
        List<Integer> expected = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            for (int end = lines.firstVertex(line) + 1; end < lines.endVertex(line); end++) {
                if (Math.min(lines.eastM(end - 1), lines.eastM(end)) <= east
                        && Math.max(lines.eastM(end - 1), lines.eastM(end)) >= west
                        && Math.min(lines.northM(end - 1), lines.northM(end)) <= north
                        && Math.max(lines.northM(end - 1), lines.northM(end)) >= south) {
                    expected.add(end);
                }
            }
        }
        List<Integer> found = new ArrayList<>();

        new PackedSegmentIndex(lines).eachIn(west, south, east, north, (line, end) -> found.add(end));

        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
    }
}
