package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class DrainageTest {

    /** 0 and 1 meet in 2; in the middle of it 3 joins; 4 stands alone. */
    private static final StreamGraph TREE = StreamNodingTest.graph(
            "LINESTRING (0 100, 100 100)",
            "LINESTRING (0 200, 100 200, 100 100)",
            "LINESTRING (100 100, 200 100, 300 100)",
            "LINESTRING (200 180, 200 100)",
            "LINESTRING (0 900, 100 900)");

    private static StreamDistance between(int line, double atM, int other, double otherM) {
        return StreamDistance.between(TREE, new LinePlace(line, atM), new LinePlace(other, otherM))
                .orElseThrow();
    }

    @Test
    void upstreamLengthIsThatOfAllLinesAbove() {
        Drainage drainage = Drainage.of(TREE);

        assertThat(List.of(
                        drainage.upstreamLengthM(TREE.pieceAt(2, 50)), drainage.upstreamLengthM(TREE.pieceAt(2, 150))))
                .containsExactly(400.0, 580.0);
    }

    @Test
    void theWayToTheMouthGoesOverThePiecesBelow() {
        Drainage drainage = Drainage.of(TREE);

        assertThat(drainage.pathToMouth(TREE.firstPiece(0)))
                .containsExactly(TREE.firstPiece(0), TREE.firstPiece(2), TREE.firstPiece(2) + 1);
        assertThat(drainage.toMouthM(new LinePlace(0, 30))).isEqualTo(OptionalDouble.of(270));
        assertThat(drainage.mouthOf(TREE.firstPiece(0))).isEqualTo(drainage.mouthOf(TREE.firstPiece(3)));
        assertThat(drainage.mouthOf(TREE.firstPiece(4))).isNotEqualTo(drainage.mouthOf(TREE.firstPiece(3)));
    }

    @Test
    void twoTributariesAreJoinedByTheStreamsButNotByTheWater() {
        assertThat(between(0, 90, 3, 70)).isEqualTo(new StreamDistance(10 + 100 + 10, OptionalDouble.empty()));
    }

    @Test
    void waterFromTheUpperPassesTheLower() {
        assertThat(between(2, 150, 0, 90)).isEqualTo(new StreamDistance(160, OptionalDouble.of(160)));
        assertThat(between(2, 150, 2, 120)).isEqualTo(new StreamDistance(30, OptionalDouble.of(30)));
    }

    @Test
    void placesThatNoStreamJoinsHaveNoDistance() {
        assertThat(StreamDistance.between(TREE, new LinePlace(0, 0), new LinePlace(4, 0)))
                .isEmpty();
    }

    @Test
    void nothingBeyondTheDistanceThatWasAskedIsTold() {
        NetworkDistances distances = new NetworkDistances(TREE, NetworkDistances.Way.EITHER);
        distances.from(new LinePlace(0, 90), 120);

        assertThat(distances.toM(new LinePlace(3, 70))).isEqualTo(OptionalDouble.of(120));
        assertThat(distances.toM(new LinePlace(3, 69.9))).isEmpty();
        assertThat(distances.reachedCount()).isEqualTo(3);
    }

    @Test
    void whereAChannelPartsTheWayFollowsTheMainArmAndShreveIsNotTold() {
        // 0 parts into 1 (minor) and 2, which meet again in 3.
        StreamGraph graph = StreamNodingTest.graph(
                "LINESTRING (0 0, 100 0)",
                "LINESTRING (100 0, 150 50, 200 0)",
                "LINESTRING (100 0, 200 0)",
                "LINESTRING (200 0, 300 0)");
        BitSet minor = new BitSet();
        minor.set(1);
        Drainage drainage = Drainage.of(graph, minor);
        StreamOrder order = StreamOrder.of(graph, minor);
        double minorM = 2 * Math.hypot(50, 50);

        assertThat(drainage.pathToMouth(0)).containsExactly(0, 2, 3);
        assertThat(drainage.upstreamLengthM(3)).isEqualTo(300 + minorM);
        assertThat(drainage.routedUpstreamLengthM(1)).isEqualTo(OptionalDouble.of(minorM));
        assertThat(drainage.upstreamLengthM(1)).isEqualTo(100 + minorM);
        assertThat(List.of(order.shreve(0), order.shreve(2), order.shreve(3)))
                .containsExactly(OptionalInt.of(1), OptionalInt.empty(), OptionalInt.empty());
        assertThat(order.strahler(3)).hasValue(1);
    }

    @Test
    void aCircleHasNoMouthAndNoOrderAndNeitherHasWhatLiesBelow() {
        StreamGraph graph = StreamNodingTest.graph(
                "LINESTRING (-100 0, 0 0)", "LINESTRING (0 0, 100 0)", "LINESTRING (100 0, 50 80, 0 0)");
        Drainage drainage = Drainage.of(graph);

        assertThat(drainage.mouthOf(0)).isEmpty();
        assertThat(drainage.toMouthM(new LinePlace(0, 0))).isEmpty();
        assertThat(drainage.pathToMouth(0)).containsExactly(0, 1, 2);
        assertThat(drainage.routedUpstreamLengthM(1)).isEmpty();
        assertThat(StreamOrder.of(graph).strahler(1)).isEmpty();
        assertThat(StreamOrder.of(graph).shreve(1)).isEmpty();
    }

    @Test
    void shreveOfTheHandCaseCountsTheSources() {
        // Source: hand case after the definition (Shreve 1966): e 2, f 3, g 2, h 5.
        int[] from = {0, 1, 2, 3, 4, 5, 6, 7, 8};
        int[] to = {2, 2, 4, 4, 8, 7, 7, 8, 9};
        // Pieces: a and b to e (2), c (3) and e to f (4), d1 and d2 to g (7), f and g to h (8).
        StreamOrder order = StreamOrder.of(new FlowTopology(10, from, to), new BitSet());

        assertThat(List.of(order.shreve(2), order.shreve(4), order.shreve(7), order.shreve(8)))
                .containsExactly(OptionalInt.of(2), OptionalInt.of(3), OptionalInt.of(2), OptionalInt.of(5));
        assertThat(List.of(order.strahler(2), order.strahler(4), order.strahler(7), order.strahler(8)))
                .containsExactly(OptionalInt.of(2), OptionalInt.of(2), OptionalInt.of(2), OptionalInt.of(3));
    }
}
