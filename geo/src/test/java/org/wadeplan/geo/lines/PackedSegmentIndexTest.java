package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.SegmentIndex.Snap;

class PackedSegmentIndexTest {

    private static LineSet set(double[]... lines) {
        LineSetBuilder set = new LineSetBuilder();
        for (double[] line : lines) {
            set.add("L" + set.lineCount(), line, line.length / 2);
        }
        return set.build();
    }

    private static SegmentIndex index(double[]... lines) {
        return new PackedSegmentIndex(set(lines));
    }

    @Test
    void aPlaceFallsOntoTheSegmentAndNotOntoTheNearestVertex() {
        SegmentIndex index = index(new double[] {0, 0, 100, 0}, new double[] {50, 12, 50, 40});

        assertThat(index.nearest(new MetricPoint(50, 5), 1, 1000))
                .containsExactly(new Snap(0, 50, 5, new MetricPoint(50, 0)));
    }

    @Test
    void atTheSameDistanceTheSmallerLineNumberWinsThenTheSmallerChainage() {
        double[] bend = {-10, 10, 10, 10, 10, -10, -10, -10};
        SegmentIndex index = index(bend, new double[] {-10, 10, -10, -10});

        assertThat(index.nearest(new MetricPoint(0, 0), 2, 1000))
                .containsExactly(
                        new Snap(0, 10, 10, new MetricPoint(0, 10)), new Snap(1, 10, 10, new MetricPoint(-10, 0)));
    }

    @Test
    void aLineExactlyAtTheLimitIsFoundAndOneBeyondIsNot() {
        SegmentIndex index = index(new double[] {0, 3, 100, 3});

        assertThat(index.nearest(new MetricPoint(50, 0), 5, 3)).hasSize(1);
        assertThat(index.nearest(new MetricPoint(50, 0), 5, Math.nextDown(3.0))).isEmpty();
    }

    @Test
    void noLinesGiveNoAnswer() {
        assertThat(index().nearest(new MetricPoint(0, 0), 3, Double.POSITIVE_INFINITY))
                .isEmpty();
    }

    @Test
    void aLimitThatIsNoDistanceIsRefused() {
        SegmentIndex index = index(new double[] {0, 3, 100, 3});

        assertThatIllegalArgumentException().isThrownBy(() -> index.nearest(new MetricPoint(0, 0), 1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> index.nearest(new MetricPoint(0, 0), 1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> index.nearest(new MetricPoint(0, 0), -1, 1));
    }

    @Test
    void aStrayVertexFarAwayLeavesAnswersAsTheyAre() {
        double[] stray = {0, 1000, 9e8, 9e8};
        SegmentIndex index = index(new double[] {0, 0, 100, 0}, stray);

        assertThat(index.nearest(new MetricPoint(50, 5), 1, 1000))
                .containsExactly(new Snap(0, 50, 5, new MetricPoint(50, 0)));
    }

    @Test
    void oneLineOfFiveMillionVerticesIsSearchedLikeAnyOther() {
        int count = 5_000_000;
        double[] zigzag = new double[2 * count];
        for (int i = 0; i < count; i++) {
            zigzag[2 * i] = i;
            zigzag[2 * i + 1] = i % 2;
        }
        SegmentIndex index = index(zigzag);

        assertThat(index.nearest(new MetricPoint(1_234_567, 3), 2, 10))
                .singleElement()
                .satisfies(snap -> assertThat(snap.at()).isEqualTo(new MetricPoint(1_234_567, 1)));
    }
}
