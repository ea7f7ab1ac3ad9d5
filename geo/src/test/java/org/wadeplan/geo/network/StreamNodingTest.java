package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

class StreamNodingTest {

    /** Lines called 0, 1, 2 … by their position. */
    static LineSet lines(String... wkts) {
        LineSetBuilder lines = new LineSetBuilder();
        for (String wkt : wkts) {
            lines.add(Integer.toString(lines.lineCount()), StreamNetworkTest.line(wkt));
        }
        return lines.build();
    }

    static StreamGraph graph(String... wkts) {
        return StreamNoding.graph(lines(wkts), 0.5);
    }

    /** Each piece as {@code line[from-to] node>node}, with a node by its place. */
    private static List<String> pieces(StreamGraph graph) {
        List<String> pieces = new ArrayList<>();
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            pieces.add(String.format(
                    Locale.ROOT,
                    "%d[%.1f-%.1f] %s>%s",
                    graph.line(piece),
                    graph.fromM(piece),
                    graph.toM(piece),
                    place(graph, graph.fromNode(piece)),
                    place(graph, graph.toNode(piece))));
        }
        return pieces;
    }

    private static String place(StreamGraph graph, int node) {
        return String.format(
                Locale.ROOT,
                "%.1f,%.1f",
                graph.nodeAt(node).eastM(),
                graph.nodeAt(node).northM());
    }

    @Test
    void noLinesMakeAnEmptyGraph() {
        assertThat(graph().pieceCount()).isZero();
        assertThat(graph().nodeCount()).isZero();
    }

    @Test
    void linesMeetAtSharedEnds() {
        assertThat(pieces(graph("LINESTRING (0 0, 100 0)", "LINESTRING (100 50, 100 0)", "LINESTRING (100 0, 200 0)")))
                .containsExactly(
                        "0[0.0-100.0] 0.0,0.0>100.0,0.0",
                        "1[0.0-50.0] 100.0,50.0>100.0,0.0",
                        "2[0.0-100.0] 100.0,0.0>200.0,0.0");
    }

    @Test
    void aTributaryPartsTheLineThatItJoinsAtAVertex() {
        assertThat(pieces(graph("LINESTRING (0 0, 100 0, 200 0)", "LINESTRING (100 50, 100 0)")))
                .containsExactly(
                        "0[0.0-100.0] 0.0,0.0>100.0,0.0",
                        "0[100.0-200.0] 100.0,0.0>200.0,0.0",
                        "1[0.0-50.0] 100.0,50.0>100.0,0.0");
    }

    @Test
    void aTributaryPartsTheLineThatItJoinsOnASegmentWithinTheTolerance() {
        assertThat(pieces(graph("LINESTRING (0 0, 200 0)", "LINESTRING (100 50, 100 0.5)")))
                .containsExactly(
                        "0[0.0-100.0] 0.0,0.0>100.0,0.5",
                        "0[100.0-200.0] 100.0,0.5>200.0,0.0",
                        "1[0.0-49.5] 100.0,50.0>100.0,0.5");
        assertThat(graph("LINESTRING (0 0, 200 0)", "LINESTRING (100 50, 100 0.501)")
                        .pieceCount())
                .isEqualTo(2);
    }

    @Test
    void aLooseEndPrefersTheNodeThatIsThereToTheMiddleOfTheLine() {
        // The end is 0.3 m from the line and 0.42 m from its end.
        assertThat(pieces(graph("LINESTRING (0 0, 200 0)", "LINESTRING (100 50, 0.3 0.3)")))
                .containsExactly("0[0.0-200.0] 0.0,0.0>200.0,0.0", "1[0.0-111.4] 100.0,50.0>0.0,0.0");
    }

    @Test
    void twoLooseEndsOfDifferentLinesWithinTheToleranceAreOneNode() {
        assertThat(pieces(graph("LINESTRING (0 0, 100 0)", "LINESTRING (100.3 0, 200 0)")))
                .containsExactly("0[0.0-100.0] 0.0,0.0>100.0,0.0", "1[0.0-99.7] 100.0,0.0>200.0,0.0");
    }

    @Test
    void endsThatMeetSomethingStayWhereTheyAre() {
        // Two confluences 0.3 m apart on the main line: neither is loose, so both remain.
        StreamGraph graph = graph(
                "LINESTRING (0 0, 100 0, 100.3 0, 200 0)",
                "LINESTRING (100 50, 100 0)",
                "LINESTRING (100 -50, 100.3 0)");

        assertThat(graph.pieceCount()).isEqualTo(5);
        assertThat(graph.isConfluence(graph.toNode(graph.firstPiece(0)))).isTrue();
    }

    @Test
    void linesThatMerelyCrossAreNotJoined() {
        assertThat(pieces(graph("LINESTRING (0 0, 100 0)", "LINESTRING (50 50, 50 -50)")))
                .containsExactly("0[0.0-100.0] 0.0,0.0>100.0,0.0", "1[0.0-100.0] 50.0,50.0>50.0,-50.0");
    }

    @Test
    void linesWithAVertexInCommonMeetThereEvenInTheMiddleOfBoth() {
        assertThat(graph("LINESTRING (0 0, 50 0, 100 0)", "LINESTRING (50 50, 50 0, 50 -50)")
                        .pieceCount())
                .isEqualTo(4);
    }

    @Test
    void aRingIsOnePieceFromItsNodeToItself() {
        assertThat(pieces(graph("LINESTRING (0 0, 100 0, 100 100, 0 0)")))
                .containsExactly("0[0.0-341.4] 0.0,0.0>0.0,0.0");
    }

    @Test
    void aStubShorterThanTheToleranceIsNotBentBackOntoItsLine() {
        assertThat(pieces(graph("LINESTRING (0 0, 100 0, 200 0)", "LINESTRING (100 0.4, 100 0)")))
                .contains("1[0.0-0.4] 100.0,0.4>100.0,0.0");
    }

    @Test
    void withoutToleranceOnlyWhatMeetsExactlyIsJoined() {
        assertThat(StreamNoding.graph(lines("LINESTRING (0 0, 200 0)", "LINESTRING (100 50, 100 1e-9)"), 0)
                        .pieceCount())
                .isEqualTo(2);
        assertThat(StreamNoding.graph(lines("LINESTRING (0 0, 200 0)", "LINESTRING (100 50, 100 0)"), 0)
                        .pieceCount())
                .isEqualTo(3);
    }

    @Test
    void aSegmentOfManyKilometresIsSeenAllAlong() {
        StreamGraph graph = graph(
                "LINESTRING (0 0, 90000 70000)",
                "LINESTRING (9000 8000, 9000 7000)",
                "LINESTRING (45000 36000, 45000 35000)",
                "LINESTRING (81000 64000, 81000 63000)");

        assertThat(graph.endPiece(0) - graph.firstPiece(0)).isEqualTo(4);
    }

    @Test
    void pieceAtANodeIsTheOneAboveIt() {
        StreamGraph graph = graph("LINESTRING (0 0, 100 0, 200 0)", "LINESTRING (100 50, 100 0)");

        assertThat(List.of(graph.pieceAt(0, 0), graph.pieceAt(0, 100), graph.pieceAt(0, 100.1), graph.pieceAt(0, 200)))
                .containsExactly(0, 0, 1, 1);
    }

    @Test
    void aToleranceBelowZeroIsABug() {
        assertThatThrownBy(() -> StreamNoding.graph(lines(), -1))
                .hasMessage("A snap tolerance is 0 m or more, not -1.0");
    }
}
