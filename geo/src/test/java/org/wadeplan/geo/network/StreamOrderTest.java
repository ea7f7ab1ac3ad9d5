package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.network.StreamOrder.Piece;

class StreamOrderTest {

    private static Piece piece(String id, String from, String to) {
        return new Piece(id, from, to, false);
    }

    private static List<Piece> handCase() {
        return List.of(
                piece("h", "4", "5"),
                piece("a", "A", "1"),
                piece("b", "B", "1"),
                piece("e", "1", "2"),
                piece("c", "C", "2"),
                piece("f", "2", "4"),
                piece("d1", "D1", "3"),
                piece("d2", "D2", "3"),
                piece("g", "3", "4"));
    }

    @Test
    void ordersTheHandCase() {
        // Source: hand case after the definition (Strahler 1957): a+b to e (2), e+source c to f (2), d1+d2 to g (2),
        // f+g to h (3).
        Map<String, Integer> expected =
                Map.of("a", 1, "b", 1, "c", 1, "d1", 1, "d2", 1, "e", 2, "f", 2, "g", 2, "h", 3);

        assertThat(StreamOrder.strahler(handCase())).isEqualTo(expected);
    }

    @Test
    void aSplitChannelDoesNotRaiseTheOrderWhereItsArmsMeetAgain() {
        List<Piece> split = List.of(
                piece("up", "0", "1"),
                piece("main", "1", "2"),
                new Piece("minor", "1", "2", true),
                piece("down", "2", "3"));

        assertThat(StreamOrder.strahler(split)).isEqualTo(Map.of("up", 1, "main", 1, "minor", 1, "down", 1));
    }

    @Test
    void piecesOnALoopGetNoOrder() {
        List<Piece> loop = List.of(piece("in", "0", "1"), piece("x", "1", "2"), piece("y", "2", "1"));

        assertThat(StreamOrder.strahler(loop)).isEqualTo(Map.of("in", 1));
    }
}
