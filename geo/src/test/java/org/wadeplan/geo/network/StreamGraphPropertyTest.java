package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

class StreamGraphPropertyTest {

    /** Vertices on a lattice of whole metres with a few small slips, so that lines meet, miss and overlap often. */
    private static List<double[]> lines(Random random) {
        List<double[]> lines = new ArrayList<>();
        int count = 2 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            double[] line = new double[2 * (2 + random.nextInt(4))];
            for (int j = 0; j < line.length; j += 2) {
                double slipM = random.nextInt(4) == 0 ? 0.3 : 0;
                line[j] = 10 * random.nextInt(6) + slipM * random.nextDouble();
                line[j + 1] = 10 * random.nextInt(6) + slipM * random.nextDouble();
            }
            lines.add(line);
        }
        lines.removeIf(line -> set(List.<double[]>of(line)).lineCount() == 0);
        return lines;
    }

    private static LineSet set(List<double[]> lines) {
        LineSetBuilder set = new LineSetBuilder();
        for (double[] line : lines) {
            set.add(key(line), line, line.length / 2);
        }
        return set.build();
    }

    /** The same for a line and its reverse. */
    private static String key(double[] line) {
        String forth = Arrays.toString(line);
        String back = Arrays.toString(reversed(line));
        return forth.compareTo(back) < 0 ? forth : back;
    }

    private static double[] reversed(double[] line) {
        double[] reversed = new double[line.length];
        for (int i = 0; i < line.length; i += 2) {
            reversed[i] = line[line.length - 2 - i];
            reversed[i + 1] = line[line.length - 1 - i];
        }
        return reversed;
    }

    /** Every piece by its line and the places of its nodes, whichever way it runs. */
    private static List<String> pieces(StreamGraph graph, boolean mirrored) {
        List<String> pieces = new ArrayList<>();
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            int upper = mirrored ? graph.toNode(piece) : graph.fromNode(piece);
            int lower = mirrored ? graph.fromNode(piece) : graph.toNode(piece);
            double lengthM = graph.lines().lengthM(graph.line(piece));
            double fromM = mirrored ? lengthM - graph.toM(piece) : graph.fromM(piece);
            pieces.add(String.format(
                    Locale.ROOT,
                    "%s %.6f+%.6f %s>%s",
                    graph.lines().id(graph.line(piece)),
                    fromM + 0.0000001,
                    graph.lengthM(piece),
                    graph.nodeAt(upper),
                    graph.nodeAt(lower)));
        }
        Collections.sort(pieces);
        return pieces;
    }

    @Property(tries = 300, seed = "20270906")
    void theOrderOfLinesChangesNothing(@ForAll Random random) {
        List<double[]> lines = lines(random);
        List<double[]> shuffled = new ArrayList<>(lines);
        Collections.shuffle(shuffled, random);

        assertThat(pieces(StreamNoding.graph(set(shuffled), 0.5), false))
                .isEqualTo(pieces(StreamNoding.graph(set(lines), 0.5), false));
    }

    @Property(tries = 300, seed = "20270906")
    void turningAllLinesRoundMirrorsThePieces(@ForAll Random random) {
        // A place beside a line that comes by twice goes to the smaller chainage, which is another one in the mirror.
        List<double[]> lines = new ArrayList<>(lines(random));
        lines.removeIf(line -> !set(List.<double[]>of(line)).shape(0).isSimple());
        List<double[]> back =
                lines.stream().map(StreamGraphPropertyTest::reversed).toList();

        assertThat(pieces(StreamNoding.graph(set(back), 0.5), true))
                .isEqualTo(pieces(StreamNoding.graph(set(lines), 0.5), false));
    }

    @Property(tries = 200, seed = "20270906")
    void aLineFarAwayChangesNothingHere(@ForAll Random random) {
        List<double[]> lines = lines(random);
        List<double[]> more = new ArrayList<>(lines);
        more.add(random.nextInt(more.size()), new double[] {90000, 90000, 90100, 90000});
        List<String> expected = pieces(StreamNoding.graph(set(lines), 0.5), false);
        List<String> found = pieces(StreamNoding.graph(set(more), 0.5), false);
        found.removeIf(piece -> piece.contains("90100"));

        assertThat(found).isEqualTo(expected);
    }

    @Property(tries = 300, seed = "20270906")
    void everyLineIsTiledByItsPieces(@ForAll Random random) {
        StreamGraph graph = StreamNoding.graph(set(lines(random)), 0.5);
        for (int line = 0; line < graph.lines().lineCount(); line++) {
            double atM = 0;
            for (int piece = graph.firstPiece(line); piece < graph.endPiece(line); piece++) {
                assertThat(graph.fromM(piece)).isEqualTo(atM);
                assertThat(graph.toM(piece)).isGreaterThan(atM);
                assertThat(graph.nodeAt(graph.fromNode(piece))
                                .distanceM(graph.lines().at(line, atM)))
                        .isLessThanOrEqualTo(1.0);
                atM = graph.toM(piece);
            }
            assertThat(atM).isEqualTo(graph.lines().lengthM(line));
        }
    }

    @Property(tries = 300, seed = "20270906")
    void everyLooseEndOnAnotherLineIsJoinedToIt(@ForAll Random random) {
        List<double[]> lines = lines(random);
        StreamGraph graph = StreamNoding.graph(set(lines), 0.5);
        LineSet set = graph.lines();
        for (int line = 0; line < set.lineCount(); line++) {
            int end = graph.toNode(graph.endPiece(line) - 1);
            boolean alone = graph.arrivingCount(end) + graph.leavingCount(end) == 1;
            // No line is joined to nothing while another passes within a quarter of the tolerance, stubs apart.
            if (alone && set.lengthM(line) > 1.5) {
                for (int other = 0; other < set.lineCount(); other++) {
                    double offM = new LineMeasure(set.shape(other))
                            .foot(graph.nodeAt(end))
                            .distanceM();
                    assertThat(other == line || offM > 0.1 || startsThere(graph, line, other))
                            .isTrue();
                }
            }
        }
    }

    /** An end is left alone where joining it would make its whole line a ring. */
    private static boolean startsThere(StreamGraph graph, int line, int other) {
        int start = graph.fromNode(graph.firstPiece(line));
        return new LineMeasure(graph.lines().shape(other))
                        .foot(graph.nodeAt(start))
                        .distanceM()
                <= 0.5;
    }

    /** Parents come before children; the trunk is 0. Node i is the lower end of piece i, parent's upper end. */
    private static int[] parents(Random random, int count) {
        int[] parent = new int[count];
        for (int i = 1; i < count; i++) {
            parent[i] = random.nextInt(i);
        }
        return parent;
    }

    private static FlowTopology tree(int[] parent) {
        int[] from = new int[parent.length];
        int[] to = new int[parent.length];
        for (int i = 0; i < parent.length; i++) {
            from[i] = i + 1;
            to[i] = i == 0 ? 0 : parent[i] + 1;
        }
        return new FlowTopology(parent.length + 1, from, to);
    }

    private static List<Integer> children(int[] parent, int piece) {
        List<Integer> children = new ArrayList<>();
        for (int i = 1; i < parent.length; i++) {
            if (parent[i] == piece) {
                children.add(i);
            }
        }
        return children;
    }

    private static int strahler(int[] parent, int piece) {
        List<Integer> above = children(parent, piece).stream()
                .map(child -> strahler(parent, child))
                .toList();
        int highest = above.stream().mapToInt(Integer::intValue).max().orElse(0);
        long sharing = above.stream().filter(order -> order == highest).count();
        return above.isEmpty() ? 1 : sharing > 1 ? highest + 1 : highest;
    }

    private static int shreve(int[] parent, int piece) {
        List<Integer> above = children(parent, piece);
        return above.isEmpty()
                ? 1
                : above.stream().mapToInt(child -> shreve(parent, child)).sum();
    }

    @Property(tries = 300, seed = "20270906")
    void ordersOfTreesAreThoseOfThePlainDefinition(
            @ForAll Random random, @ForAll @IntRange(min = 1, max = 40) int count) {
        int[] parent = parents(random, count);
        StreamOrder order = StreamOrder.of(tree(parent), new BitSet());
        for (int piece = 0; piece < count; piece++) {
            assertThat(order.strahler(piece)).hasValue(strahler(parent, piece));
            assertThat(order.shreve(piece)).hasValue(shreve(parent, piece));
        }
    }

    /** Shortest ways between all nodes, Floyd and Warshall. */
    private static double[][] ways(StreamGraph graph, boolean alsoUp) {
        double[][] m = new double[graph.nodeCount()][graph.nodeCount()];
        for (double[] row : m) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        for (int node = 0; node < m.length; node++) {
            m[node][node] = 0;
        }
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            int from = graph.fromNode(piece);
            int to = graph.toNode(piece);
            m[from][to] = Math.min(m[from][to], graph.lengthM(piece));
            m[to][from] = alsoUp ? Math.min(m[to][from], graph.lengthM(piece)) : m[to][from];
        }
        for (int via = 0; via < m.length; via++) {
            for (int i = 0; i < m.length; i++) {
                for (int j = 0; j < m.length; j++) {
                    m[i][j] = Math.min(m[i][j], m[i][via] + m[via][j]);
                }
            }
        }
        return m;
    }

    @Property(tries = 200, seed = "20270906")
    void distancesAreTheShortestOfAllWays(@ForAll Random random) {
        StreamGraph graph = StreamNoding.graph(set(lines(random)), 0.5);
        double[][] either = ways(graph, true);
        double[][] down = ways(graph, false);
        NetworkDistances through = new NetworkDistances(graph, NetworkDistances.Way.EITHER);
        NetworkDistances withWater = new NetworkDistances(graph, NetworkDistances.Way.DOWNSTREAM);
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            LinePlace start = new LinePlace(graph.line(piece), graph.toM(piece));
            through.from(start, Double.POSITIVE_INFINITY);
            withWater.from(start, Double.POSITIVE_INFINITY);
            for (int node = 0; node < graph.nodeCount(); node++) {
                assertThat(through.nodeM(node).orElse(Double.POSITIVE_INFINITY))
                        .isEqualTo(either[graph.toNode(piece)][node], within(1e-9));
                assertThat(withWater.nodeM(node).orElse(Double.POSITIVE_INFINITY))
                        .isEqualTo(down[graph.toNode(piece)][node], within(1e-9));
            }
        }
    }

    @Property(tries = 200, seed = "20270906")
    void distanceBetweenTwoPlacesIsTheSameThereAndBack(@ForAll Random random) {
        StreamGraph graph = StreamNoding.graph(set(lines(random)), 0.5);
        LinePlace one = somewhere(graph, random);
        LinePlace other = somewhere(graph, random);

        assertThat(StreamDistance.between(graph, one, other).map(way -> Math.round(way.throughM() * 1e6)))
                .isEqualTo(StreamDistance.between(graph, other, one).map(way -> Math.round(way.throughM() * 1e6)));
    }

    private static LinePlace somewhere(StreamGraph graph, Random random) {
        int line = random.nextInt(graph.lines().lineCount());
        return new LinePlace(line, random.nextDouble() * graph.lines().lengthM(line));
    }

    @Property(tries = 200, seed = "20270906")
    void upstreamLengthCountsEveryStretchOnce(@ForAll Random random) {
        StreamGraph graph = StreamNoding.graph(set(lines(random)), 0.5);
        Drainage drainage = Drainage.of(graph);
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            TreeSet<Integer> above = new TreeSet<>(List.of(piece));
            boolean grew = true;
            while (grew) {
                grew = false;
                for (int each = 0; each < graph.pieceCount(); each++) {
                    int lower = graph.toNode(each);
                    grew |= above.stream().anyMatch(one -> graph.fromNode(one) == lower) && above.add(each);
                }
            }
            assertThat(drainage.upstreamLengthM(piece))
                    .isEqualTo(above.stream().mapToDouble(graph::lengthM).sum(), within(1e-6));
        }
    }

    @Property(tries = 200, seed = "20270906")
    void crossingsAreThoseOfComparingEverySegmentWithEveryOther(@ForAll Random random) {
        LineSet lines = set(lines(random));
        int expected = 0;
        for (int one = 0; one < lines.lineCount(); one++) {
            for (int other = one + 1; other < lines.lineCount(); other++) {
                expected += crossings(lines, one, other);
            }
        }
        assertThat(LineCrossings.of(lines)).hasSize(expected);
    }

    private static int crossings(LineSet lines, int one, int other) {
        int count = 0;
        for (int a = lines.firstVertex(one) + 1; a < lines.endVertex(one); a++) {
            for (int b = lines.firstVertex(other) + 1; b < lines.endVertex(other); b++) {
                double s = side(lines, a, b - 1) * side(lines, a, b);
                double t = side(lines, b, a - 1) * side(lines, b, a);
                count += s < 0 && t < 0 ? 1 : 0;
            }
        }
        return count;
    }

    private static double side(LineSet lines, int end, int vertex) {
        return java.awt.geom.Line2D.relativeCCW(
                lines.eastM(end - 1),
                lines.northM(end - 1),
                lines.eastM(end),
                lines.northM(end),
                lines.eastM(vertex),
                lines.northM(vertex));
    }
}
