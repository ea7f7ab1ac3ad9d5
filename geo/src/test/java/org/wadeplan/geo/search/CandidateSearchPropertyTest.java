package org.wadeplan.geo.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;

/** On random winding networks with random places to keep clear of; distances checked by the slow way of another library. */
class CandidateSearchPropertyTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double SLACK_M = 1e-5;

    /** A main stream and tributaries that join at its vertices, each winding at random. */
    private static Map<String, LineString> network(long seed) {
        Random random = new Random(seed);
        Map<String, LineString> lines = new LinkedHashMap<>();
        Coordinate[] main = wander(random, new Coordinate(0, 3000), -Math.PI / 2, 20 + random.nextInt(40));
        lines.put("MAIN", SHAPES.createLineString(main));
        int tributaries = random.nextInt(5);
        for (int i = 0; i < tributaries; i++) {
            Coordinate mouth = main[1 + random.nextInt(main.length - 1)];
            Coordinate[] up = wander(random, mouth, random.nextDouble() * Math.PI, 5 + random.nextInt(20));
            List<Coordinate> down = new ArrayList<>(List.of(up));
            Collections.reverse(down);
            lines.put("T" + i, SHAPES.createLineString(down.toArray(Coordinate[]::new)));
        }
        return lines;
    }

    private static Coordinate[] wander(Random random, Coordinate from, double heading, int steps) {
        Coordinate[] way = new Coordinate[steps + 1];
        way[0] = from.copy();
        double turned = heading;
        for (int i = 1; i <= steps; i++) {
            turned = heading + (random.nextDouble() - 0.5) * 2;
            double stepM = 5 + 60 * random.nextDouble();
            way[i] = new Coordinate(way[i - 1].x + stepM * Math.cos(turned), way[i - 1].y + stepM * Math.sin(turned));
        }
        return way;
    }

    private static SearchGround ground(Map<String, LineString> lines, long seed) {
        StreamGraph graph = Streams.graph(lines);
        Random random = new Random(seed + 1);
        List<PlaceToClear> places = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            List<String> ids = new ArrayList<>(new TreeMap<>(lines).keySet());
            String id = ids.get(random.nextInt(ids.size()));
            double share = random.nextDouble();
            double clearM = 10 + 90 * random.nextDouble();
            int line = Streams.number(graph, id);
            LinePlace on = new LinePlace(line, share * graph.lines().lengthM(line));
            places.add(new PlaceToClear(
                    ReasonKind.OBSTACLE,
                    "weir",
                    "W" + i,
                    graph.lines().at(line, on.chainageM()),
                    Optional.of(on),
                    clearM));
        }
        return new SearchGround(graph, places, List.of(), List.of(), CandidateFacts.UNKNOWN, LineTraits.NONE);
    }

    private static Rules rules(boolean straight, boolean endToEnd) {
        return Rules.USUAL
                .clearing(40, straight ? ClearBy.STRAIGHT : ClearBy.ALONG)
                .laid(endToEnd ? new SearchRules.EndToEnd() : new SearchRules.Fitted(10), true);
    }

    @Property(tries = 120)
    void candidatesKeepEveryStraightDistanceAndNeverOverlap(
            @ForAll @IntRange(max = 100_000) int seed, @ForAll boolean endToEnd) {
        SearchGround ground = ground(network(seed), seed);
        StreamGraph graph = ground.graph();
        List<Candidate> found = rules(true, endToEnd).search(ground).result().candidates();

        for (Candidate candidate : found) {
            LineString line = candidate.line(graph.lines());
            assertThat(line.getLength()).isEqualTo(150, within(SLACK_M));
            ground.places().forEach(place -> assertThat(line.distance(point(place.at())))
                    .isGreaterThanOrEqualTo(place.clearM() - SLACK_M));
            for (int node = 0; node < graph.nodeCount(); node++) {
                if (graph.isConfluence(node)) {
                    assertThat(line.distance(point(graph.nodeAt(node)))).isGreaterThanOrEqualTo(40 - SLACK_M);
                }
            }
        }
        for (Candidate a : found) {
            for (Candidate b : found) {
                assertThat(a.rank() == b.rank() || sharedM(a, b) < SLACK_M).isTrue();
            }
        }
    }

    private static org.locationtech.jts.geom.Point point(MetricPoint at) {
        return SHAPES.createPoint(new Coordinate(at.eastM(), at.northM()));
    }

    private static double sharedM(Candidate a, Candidate b) {
        double sharedM = 0;
        for (LineStretch one : a.stretches()) {
            for (LineStretch other : b.stretches()) {
                if (one.line() == other.line()) {
                    sharedM += Math.max(0, Math.min(one.toM(), other.toM()) - Math.max(one.fromM(), other.fromM()));
                }
            }
        }
        return sharedM;
    }

    @Property(tries = 120)
    void candidatesLieInsideOnePieceAndKeepTheirDistanceAlongTheStream(@ForAll @IntRange(max = 100_000) int seed) {
        SearchGround ground = ground(network(seed), seed);
        StreamGraph graph = ground.graph();
        for (Candidate candidate : rules(false, false).search(ground).result().candidates()) {
            assertThat(candidate.stretches()).hasSize(1);
            LineStretch stretch = candidate.stretches().get(0);
            int piece = graph.pieceAt(stretch.line(), (stretch.fromM() + stretch.toM()) / 2);
            assertThat(stretch.fromM()).isGreaterThanOrEqualTo(graph.fromM(piece) - SLACK_M);
            assertThat(stretch.toM()).isLessThanOrEqualTo(graph.toM(piece) + SLACK_M);
            for (PlaceToClear place : ground.places()) {
                double alongM = Math.min(
                        slowAlongM(graph, place.on().orElseThrow(), new LinePlace(stretch.line(), stretch.fromM())),
                        slowAlongM(graph, place.on().orElseThrow(), new LinePlace(stretch.line(), stretch.toM())));
                assertThat(alongM).isGreaterThanOrEqualTo(place.clearM() - SLACK_M);
            }
        }
    }

    /** By repeated relaxation over all pieces: slow and plain. */
    private static double slowAlongM(StreamGraph graph, LinePlace from, LinePlace to) {
        double[] atNode = new double[graph.nodeCount()];
        java.util.Arrays.fill(atNode, Double.POSITIVE_INFINITY);
        int start = graph.pieceAt(from.line(), from.chainageM());
        int end = graph.pieceAt(to.line(), to.chainageM());
        atNode[graph.fromNode(start)] = from.chainageM() - graph.fromM(start);
        atNode[graph.toNode(start)] = Math.min(atNode[graph.toNode(start)], graph.toM(start) - from.chainageM());
        for (int round = 0; round < graph.nodeCount(); round++) {
            for (int piece = 0; piece < graph.pieceCount(); piece++) {
                int a = graph.fromNode(piece);
                int b = graph.toNode(piece);
                atNode[b] = Math.min(atNode[b], atNode[a] + graph.lengthM(piece));
                atNode[a] = Math.min(atNode[a], atNode[b] + graph.lengthM(piece));
            }
        }
        double direct = start == end ? Math.abs(from.chainageM() - to.chainageM()) : Double.POSITIVE_INFINITY;
        return Math.min(
                direct,
                Math.min(
                        atNode[graph.fromNode(end)] + to.chainageM() - graph.fromM(end),
                        atNode[graph.toNode(end)] + graph.toM(end) - to.chainageM()));
    }

    @Property(tries = 60)
    void ruledOutAndFreeLengthsTileEveryLine(@ForAll @IntRange(max = 100_000) int seed, @ForAll boolean straight) {
        SearchGround ground = ground(network(seed), seed);
        CandidateSearch search = rules(straight, false).search(ground);
        LengthTally tally = search.result().tally();
        double rejectedM = 0;
        Map<Integer, Double> lastM = new TreeMap<>();
        for (RejectedStretch rejected : search.rejected()) {
            LineStretch stretch = rejected.stretch();
            assertThat(rejected.reasons()).isNotEmpty();
            assertThat(stretch.fromM()).isGreaterThanOrEqualTo(lastM.getOrDefault(stretch.line(), 0.0) - SLACK_M);
            lastM.put(stretch.line(), stretch.toM());
            rejectedM += stretch.lengthM();
        }
        double totalM = 0;
        for (int line = 0; line < ground.graph().lines().lineCount(); line++) {
            totalM += ground.graph().lines().lengthM(line);
        }

        assertThat(tally.totalM()).isEqualTo(totalM, within(1e-6 * totalM));
        assertThat(tally.usableM() + rejectedM).isEqualTo(totalM, within(1e-6 * totalM));
    }

    @Property(tries = 60)
    void theResultDoesNotDependOnTheOrderOfTheLines(@ForAll @IntRange(max = 100_000) int seed) {
        Map<String, LineString> lines = network(seed);
        List<String> ids = new ArrayList<>(lines.keySet());
        Collections.shuffle(ids, new Random(seed));
        Map<String, LineString> shuffled = new LinkedHashMap<>();
        ids.forEach(id -> shuffled.put(id, lines.get(id)));

        assertThat(words(ground(shuffled, seed))).isEqualTo(words(ground(lines, seed)));
    }

    private static List<String> words(SearchGround ground) {
        return Rules.USUAL.gap(100).best(5).search(ground).result().candidates().stream()
                .map(each -> ground.graph().lines().id(each.start().line()) + " "
                        + each.start().chainageM() + " " + each.score().points())
                .toList();
    }

    @Property(tries = 60)
    void aLineFarAwayChangesNothingHere(@ForAll @IntRange(max = 100_000) int seed) {
        Map<String, LineString> lines = network(seed);
        Map<String, LineString> more = new LinkedHashMap<>(lines);
        more.put("FAR", Streams.line("LINESTRING (500000 500000, 500100 500000)"));

        assertThat(words(ground(more, seed).graph(), lines, seed))
                .isEqualTo(words(ground(lines, seed).graph(), lines, seed));
    }

    /** The places are those of the small network in both cases. */
    private static List<String> words(StreamGraph graph, Map<String, LineString> lines, long seed) {
        List<PlaceToClear> places = ground(lines, seed).places().stream()
                .map(place -> new PlaceToClear(
                        place.kind(),
                        place.noun(),
                        place.id(),
                        place.at(),
                        place.on()
                                .map(on -> Streams.place(
                                        graph, Streams.graph(lines).lines().id(on.line()), on.chainageM())),
                        place.clearM()))
                .toList();
        return words(new SearchGround(graph, places, List.of(), List.of(), CandidateFacts.UNKNOWN, LineTraits.NONE));
    }

    @Property(tries = 40)
    void aSearchOfAllLinesGivesWhatSearchesOfSingleLinesGive(@ForAll @IntRange(max = 100_000) int seed) {
        SearchGround ground = ground(network(seed), seed);
        List<String> all = places(ground, Rules.USUAL);
        List<String> single = new ArrayList<>();
        for (int line = 0; line < ground.graph().lines().lineCount(); line++) {
            single.addAll(places(ground, Rules.USUAL.only(ground.graph().lines().id(line))));
        }

        assertThat(single).containsExactlyInAnyOrderElementsOf(all);
    }

    private static List<String> places(SearchGround ground, Rules rules) {
        return rules.search(ground).result().candidates().stream()
                .map(each -> each.start() + " " + each.score().points())
                .toList();
    }

    @Property(tries = 40)
    void aSiteIsClearWhereAndOnlyWhereTheSearchRejectsNoPartOfItsReach(
            @ForAll @IntRange(max = 100_000) int seed, @ForAll boolean straight) {
        SearchGround ground = ground(network(seed), seed);
        CandidateSearch search = rules(straight, false).search(ground);
        List<RejectedStretch> rejected = search.rejected();
        int line = Streams.number(ground.graph(), "MAIN");
        for (double atM = 1; atM < ground.graph().lines().lengthM(line); atM += 37) {
            double toM = atM;
            int piece = ground.graph().pieceAt(line, toM);
            boolean inside = toM - 150 >= ground.graph().fromM(piece);
            boolean touched = rejected.stream()
                    .map(RejectedStretch::stretch)
                    .anyMatch(part -> part.line() == line && part.fromM() < toM && part.toM() > toM - 150);
            assertThat(search.move(new LinePlace(line, toM)).isClear()).isEqualTo(inside && !touched);
        }
    }
}
