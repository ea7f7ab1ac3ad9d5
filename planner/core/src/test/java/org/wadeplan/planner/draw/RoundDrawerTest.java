package org.wadeplan.planner.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.draw.FrameLengths;
import org.wadeplan.geo.draw.Loss;
import org.wadeplan.geo.draw.StratumRecord;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.RoundCopies;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.LineKindSpan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Terrain;

class RoundDrawerTest {

    private static final Round ROUND = DemoRound.resolved();

    private static DrawRequest request(int size, int reservePct, StrataBy strata, long seed, Map<String, Loss> lost) {
        return new DrawRequest(
                size,
                reservePct,
                strata,
                new Allocation.Proportional(),
                OptionalDouble.empty(),
                ReachPoint.START,
                seed,
                lost);
    }

    private static RoundDraw draw(DrawRequest request) {
        return RoundDrawer.draw(ROUND, request).value().orElseThrow();
    }

    /** The scenario of the demo round: the holder of L-OUN-02 refused, the reach of TOL-02 is dry. */
    @Test
    void theFrameLeavesOutRefusedLandAndDryReachesAndSaysHowMuch() {
        RoundDraw draw = draw(request(8, 25, StrataBy.NONE, 1, Map.of()));

        assertThat(draw.frame().leftOut().stream().map(left -> left.reason()).toList())
                .containsExactly(
                        "denied: consent refused on parcel L-OUN-02",
                        "dry: the reach of TOL-02 is dry",
                        "non-target: the tidal water PEL");
        assertThat(draw.frame().dryM()).isEqualTo(150, within(0.002));
        assertThat(draw.frame().deniedM()).isBetween(300.0, 1000.0);
        assertThat(draw.frame().eligibleM()
                        + draw.frame().deniedM()
                        + draw.frame().dryM()
                        + draw.frame().nonTargetM())
                .isEqualTo(draw.frame().mappedM(), within(1e-6));
        assertThat(draw.frame().mappedM())
                .isEqualTo(
                        ROUND.terrain().network().lines().stream()
                                .mapToDouble(line -> line.lengthM())
                                .sum(),
                        within(0.01));
    }

    @ParameterizedTest
    @EnumSource
    void everyStratumKnownToTheRoundIsDrawnFrom(StrataBy strata) {
        RoundDraw draw = draw(request(20, 50, strata, 2, Map.of()));

        assertThat(draw.strata().stream().mapToDouble(StratumRecord::lengthM).sum())
                .isEqualTo(draw.frame().eligibleM(), within(1e-6));
        assertThat(draw.strata().stream().mapToInt(StratumRecord::size).sum()).isEqualTo(20);
        List<String> names = draw.strata().stream().map(StratumRecord::stratum).toList();
        switch (strata) {
            case NONE -> assertThat(names).containsExactly("all");
            case ORDER -> assertThat(names).contains("1");
            case CATCHMENT -> assertThat(names).containsExactly("BRN", "HSK", "OUN", "TOL");
            case WATER -> assertThat(names).containsExactly("BRN", "HSK", "OUN-L", "OUN-U", "TOL");
            case ROAD -> assertThat(names).containsExactly("far", "near-road");
        }
    }

    @Test
    void theDistanceToRoadsIsNeverAppliedInSilence() {
        DrawRequest near = new DrawRequest(
                8,
                25,
                StrataBy.NONE,
                new Allocation.Proportional(),
                OptionalDouble.of(800),
                ReachPoint.START,
                1,
                Map.of());
        RoundDraw draw = draw(near);

        assertThat(draw.frame().filteredM()).isGreaterThan(10_000);
        assertThat(draw.frame().leftOut().stream().map(left -> left.reason()).toList())
                .contains("filtered: over 800 m from a road, straight");
        assertThat(draw.design()).anyMatch(words -> words.startsWith("Stretches over 800 m from a road were left out"));
        assertThat(draw.places()).allSatisfy(place -> assertThat(
                        ROUND.terrain().roads().orElseThrow().nearest(place.at(), 800 + 13))
                .isPresent());
    }

    @Test
    void whatTheMapCallsALakeOrAPipeIsNoTargetAndWhatItCallsADitchIs() {
        Terrain all = ROUND.terrain();
        Terrain mapped = new Terrain(
                all.crs(),
                all.network(),
                all.catchments(),
                all.parcels(),
                all.barriers(),
                all.roads(),
                all.elevation(),
                List.of(
                        new LineKindSpan("TOL", "lake", 1000, 3000),
                        new LineKindSpan("HSK", "pipe", 0, 200),
                        new LineKindSpan("HSK", "ditch", 200, 900)));
        RoundDraw draw = RoundDrawer.draw(
                        RoundCopies.with(ROUND, "terrain", mapped), request(8, 25, StrataBy.NONE, 1, Map.of()))
                .value()
                .orElseThrow();

        assertThat(draw.frame().leftOut())
                .contains(
                        new FrameLengths.LeftOut("non-target: mapped as lake", 2000),
                        new FrameLengths.LeftOut("non-target: mapped as pipe", 200));
        assertThat(draw.frame().leftOut()).noneMatch(left -> left.reason().contains("ditch"));
    }

    @Test
    void withoutAMapOfRoadsTheDistanceToThemIsRefused() {
        Terrain all = ROUND.terrain();
        Terrain roadless = new Terrain(all.crs(), all.network(), all.catchments(), all.parcels(), all.barriers());
        DrawRequest near = request(8, 25, StrataBy.ROAD, 1, Map.of());

        assertThat(RoundDrawer.draw(RoundCopies.with(ROUND, "terrain", roadless), near)
                        .problems())
                .extracting(Problem::code)
                .containsExactly("draw-roads-missing");
    }

    /** A site must never be fished without leave: neither the point nor any metre of a reach to be visited lies there. */
    @Test
    void noVisitedReachTouchesRefusedLandOverFortySeeds() {
        Geometry refused = ROUND.terrain().parcels().stream()
                .filter(parcel -> parcel.id().equals("L-OUN-02"))
                .findFirst()
                .orElseThrow()
                .area();
        int turnedAway = 0;
        for (long seed = 0; seed < 40; seed++) {
            RoundDraw draw = draw(new DrawRequest(
                    60,
                    50,
                    StrataBy.NONE,
                    new Allocation.Proportional(),
                    OptionalDouble.empty(),
                    ReachPoint.START,
                    seed,
                    Map.of()));
            for (DrawnPlace place : draw.places()) {
                if (place.use().equals("visit")) {
                    LineString reach = ROUND.terrain()
                            .network()
                            .between(
                                    place.stream(),
                                    place.reachStartM().orElseThrow(),
                                    place.reachEndM().orElseThrow());
                    assertThat(refused.intersects(reach))
                            .as(place.code() + " of seed " + seed)
                            .isFalse();
                } else if (place.lossGround().equals(Optional.of("denied"))) {
                    turnedAway++;
                }
            }
        }
        assertThat(turnedAway)
                .as("reaches that begin below the land and would run onto it")
                .isPositive();
    }

    @Test
    void visitedReachesFitTheirLinesAndDoNotOverlap() {
        for (ReachPoint point : ReachPoint.values()) {
            RoundDraw draw = draw(new DrawRequest(
                    150, 50, StrataBy.NONE, new Allocation.Proportional(), OptionalDouble.empty(), point, 5, Map.of()));
            List<DrawnPlace> visited = draw.places().stream()
                    .filter(place -> place.use().equals("visit"))
                    .toList();

            assertThat(visited).hasSize(150);
            assertThat(draw.places()).anyMatch(place -> place.lossGround().equals(Optional.of("no-reach")));
            for (DrawnPlace place : visited) {
                double startM = place.reachStartM().orElseThrow();
                double endM = place.reachEndM().orElseThrow();
                assertThat(startM - endM).isEqualTo(150, within(1e-6));
                assertThat(startM - place.chainageM()).isEqualTo(point == ReachPoint.START ? 0 : 75, within(1e-6));
                assertThat(visited.stream()
                                .filter(other -> other.stream().equals(place.stream())
                                        && other.reachEndM().orElseThrow() < startM
                                        && endM < other.reachStartM().orElseThrow())
                                .toList())
                        .containsExactly(place);
            }
        }
    }

    @Test
    void aReserveOfItsStratumStandsInForALossAndTakesItsWeight() {
        Map<String, Loss> lost = Map.of("D006", new Loss(Loss.Ground.DENIED, "refused by letter"));
        RoundDraw before = draw(request(8, 50, StrataBy.CATCHMENT, 20270906, Map.of()));
        RoundDraw after = draw(request(8, 50, StrataBy.CATCHMENT, 20270906, lost));

        DrawnPlace gone = place(after, "D006");
        DrawnPlace standIn = after.places().stream()
                .filter(place -> place.standsInFor().isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(gone.use()).isEqualTo("lost");
        assertThat(gone.lossReason()).contains("refused by letter");
        assertThat(gone.weightM()).isEmpty();
        assertThat(standIn.standsInFor()).contains("D006");
        assertThat(standIn.role()).isEqualTo("reserve");
        assertThat(standIn.turn()).isEqualTo(1);
        assertThat(standIn.stratum()).isEqualTo(gone.stratum());
        assertThat(standIn.weightM().orElseThrow())
                .isEqualTo(place(before, "D006").designWeightM(), within(1e-6));
    }

    private static DrawnPlace place(RoundDraw draw, String code) {
        return draw.places().stream()
                .filter(place -> place.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void lossesOfPlacesThatWereNotDrawnAndTooFewReservesAreSaid() {
        Loss dry = new Loss(Loss.Ground.DRY, "dry summer");
        Checked<RoundDraw> drawn = RoundDrawer.draw(
                ROUND, request(4, 25, StrataBy.NONE, 3, Map.of("D001", dry, "D002", dry, "R001", dry, "D099", dry)));

        assertThat(drawn.problems().stream().map(Problem::sentence).toList())
                .containsExactly(
                        "draw, lost: no drawn place is called D099. Allowed: a code of this draw, such as D001 or R001."
                                + " Do: correct it; the same seed, size and strata are needed for codes to be the same",
                        "draw, stratum all: 2 places can be visited, 2 fewer than wanted: 0 have no leave or no reach, 3"
                                + " are dry or no target, and no reserve is left. Allowed: as many places as wanted. Do:"
                                + " draw again with the same seed and more reserves: base and earlier reserves stay as"
                                + " they are");
    }

    @Test
    void wishesThatCannotBeMetAreAllSaidAtOnce() {
        Checked<RoundDraw> drawn = RoundDrawer.draw(ROUND, request(600, 10, StrataBy.NONE, 3, Map.of()));

        assertThat(drawn.value()).isEmpty();
        assertThat(drawn.problems()).extracting(Problem::code).containsExactly("draw-reserve", "draw-size-over-frame");
    }

    @Test
    void theSameRequestGivesTheSameDraw() {
        DrawRequest request = request(12, 100, StrataBy.ORDER, 7, Map.of());

        assertThat(draw(request)).isEqualTo(draw(request));
    }
}
