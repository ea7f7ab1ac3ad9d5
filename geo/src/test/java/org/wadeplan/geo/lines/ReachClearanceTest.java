package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.wadeplan.geo.lines.CutRule.From;

class ReachClearanceTest {

    private static final CutRule RULE = new CutRule(150, 10, From.LAST_VERTEX);

    private static LineSet set(double[]... lines) {
        LineSetBuilder set = new LineSetBuilder();
        for (double[] line : lines) {
            set.add("L" + set.lineCount(), line, line.length / 2);
        }
        return set.build();
    }

    private static ReachClearance straight(LineSet lines, LineNodes nodes, double clearM) {
        return ReachClearance.straight(new ReachCut(lines, RULE), new PackedSegmentIndex(lines), nodes, clearM);
    }

    @Test
    void aReachExactlyAtTheLimitIsTooNearAndOneJustBeyondIsKept() {
        LineSet lines = set(new double[] {0, 0, 0, -150});
        LineNodes nodes = new LineNodes.Builder().node(50, -70).build();

        assertThat(straight(lines, nodes, 50).isKept(0)).isFalse();
        assertThat(straight(lines, nodes, Math.nextDown(50.0)).isKept(0)).isTrue();
    }

    @Test
    void measuredStraightAReachBesideAnothersConfluenceIsTooNearAndAlongTheLineItIsKept() {
        // Three lines meet at 0, 0; a fourth passes 40 m beside.
        LineSet lines = set(
                new double[] {-200, 100, 0, 0},
                new double[] {-200, -100, 0, 0},
                new double[] {0, 0, 500, 0},
                new double[] {40, 300, 40, -300});
        ReachCut cut = new ReachCut(lines, RULE);
        LineNodes nodes = LineNodes.whereEndsMeet(lines, 3);
        ReachClearance along = ReachClearance.along(cut, nodes, 30);
        ReachClearance straight = ReachClearance.straight(cut, new PackedSegmentIndex(lines), nodes, 45);

        assertThat(nodes.nodeCount()).isEqualTo(1);
        assertThat(cut.reachCount()).isEqualTo(1 + 1 + 3 + 4);
        assertThat(along.keptCount()).isEqualTo(9 - 2);
        assertThat(straight.keptCount()).isEqualTo(9 - 2 - 2);
        assertThat(straight.nearestNode(6)).isEqualTo(0);
        assertThat(straight.nearestM(6)).isEqualTo(40);
        assertThat(straight.nearestNode(8)).isEqualTo(-1);
    }

    @Test
    void aNodeInTheMiddleOfALineCountsWhereItIsHandedOver() {
        LineSet lines = set(new double[] {0, 0, 0, -600});
        LineNodes nodes = new LineNodes.Builder().node(0, -225).touch(0, 225).build();

        ReachClearance along = ReachClearance.along(new ReachCut(lines, RULE), nodes, 74);

        assertThat(along.keptCount()).isEqualTo(3);
        assertThat(along.isKept(2)).isFalse();
        assertThat(along.nearestM(2)).isZero();
    }

    @Test
    void aRingCountsAsTwoOfTheEndsThatMeet() {
        LineSet lines = set(new double[] {0, 0, 9, 0, 9, 9, 0, 0}, new double[] {0, 0, -50, 0});

        LineNodes nodes = LineNodes.whereEndsMeet(lines, 3);

        assertThat(nodes.nodeCount()).isEqualTo(1);
        assertThat(nodes.touchCount(0)).isEqualTo(3);
        assertThat(nodes.touchLine(0, 1)).isZero();
        assertThat(nodes.touchM(0, 1)).isEqualTo(lines.lengthM(0));
    }

    @Test
    void anIndexOfOtherLinesIsRefused() {
        LineSet lines = set(new double[] {0, 0, 0, -600});
        PackedSegmentIndex other = new PackedSegmentIndex(set(new double[] {0, 0, 0, -600}));

        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        ReachClearance.straight(new ReachCut(lines, RULE), other, new LineNodes.Builder().build(), 50));
    }
}
