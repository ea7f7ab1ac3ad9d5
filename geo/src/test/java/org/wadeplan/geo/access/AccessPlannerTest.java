package org.wadeplan.geo.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.terrain.Ground;

/** Stream S runs due south along E 0 from N 1000 to N 0, so that true left is the east. */
class AccessPlannerTest {

    private static final LineSet SOUTHWARD = lines("S", 0, 1000, 0, 500, 0, 0);

    private static LineSet lines(String id, double... eastNorth) {
        LineSetBuilder lines = new LineSetBuilder();
        lines.add(id, eastNorth, eastNorth.length / 2);
        return lines.build();
    }

    private static Roads road(String name, String kind, double... eastNorth) {
        return new Roads(lines(name, eastNorth), List.of(kind));
    }

    private static AccessPlanner planner(Roads roads, LineSet streams, Land... land) {
        return new AccessPlanner(roads, streams, Ground.UNKNOWN, List.of(land), 2000);
    }

    private static Land land(String parcel, boolean consented, double west, double south, double east, double north) {
        return new Land(parcel, consented, new GeometryFactory().toGeometry(new Envelope(west, east, south, north)));
    }

    @Test
    void theWalkLeavesTheNearestPointOfTheRoad() {
        Access access =
                planner(road("Mill lane", "track", 80, 900, 80, 100), SOUTHWARD).toPlace(0, 600);

        assertThat(access.walkIn())
                .contains(new WalkIn(
                        "Mill lane",
                        new MetricPoint(80, 400),
                        new MetricPoint(0, 400),
                        80,
                        OptionalDouble.empty(),
                        List.of()));
        assertThat(access.words()).isEqualTo("80 m from Mill lane (track), to the true left bank");
    }

    @Test
    void fromTheOtherSideItIsTheTrueRightBank() {
        assertThat(planner(road("R", "", -80, 900, -80, 100), SOUTHWARD)
                        .toPlace(0, 500)
                        .words())
                .isEqualTo("80 m from R, to the true right bank");
    }

    @Test
    void noRoadNearEnoughIsAnAnswer() {
        AccessPlanner planner = planner(road("R", "road", 2500, 900, 2500, 100), SOUTHWARD);

        assertThat(planner.toPlace(0, 500)).isEqualTo(new Access.NoRoad(2000));
        assertThat(planner.toStretch(0, 400, 550).words()).isEqualTo("no road or track within 2000 m");
        assertThat(planner.walkIn(0, 400, 550)).isEmpty();
    }

    @Test
    void aStretchIsReachedWhereTheRoadComesNearest() {
        Roads slanting = road("R", "road", 300, 1000, 100, 520, 300, 0);
        AccessPlanner planner = planner(slanting, SOUTHWARD);

        assertThat(planner.toStretch(0, 450, 600).walkIn().orElseThrow().arrive())
                .isEqualTo(new MetricPoint(0, 520));
        assertThat(planner.toStretch(0, 450, 600).walkIn().orElseThrow().lengthM())
                .isEqualTo(100, within(1e-9));
        assertThat(planner.walkIn(0, 450, 600).orElseThrow().arrive()).isEqualTo(new MetricPoint(0, 400));
    }

    @Test
    void alongAParallelRoadTheLowerEndIsReached() {
        assertThat(planner(road("R", "road", 60, 1000, 60, 0), SOUTHWARD)
                        .toStretch(0, 450, 600)
                        .walkIn()
                        .orElseThrow()
                        .arrive())
                .isEqualTo(new MetricPoint(0, 400));
    }

    @Test
    void whereTheRoadMeetsTheStreamThereIsNothingToWalkAndNoSide() {
        Access access = planner(road("Bridge road", "road", -100, 450, 100, 450), SOUTHWARD)
                .toStretch(0, 500, 650);

        assertThat(access.words()).isEqualTo("0 m from Bridge road (road)");
        assertThat(access.walkIn().orElseThrow().arrive()).isEqualTo(new MetricPoint(0, 450));
    }

    @Test
    void parcelsWithoutConsentAreNamedInWalkingOrder() {
        AccessPlanner planner = planner(
                road("R", "road", 300, 1000, 300, 0),
                SOUTHWARD,
                land("B-late", false, 10, 0, 100, 1000),
                land("A-first", false, 200, 0, 250, 1000),
                land("yes", true, 100, 0, 200, 1000),
                land("brushed", false, 0, 500, 300, 800),
                land("elsewhere", false, 400, 0, 500, 1000));

        assertThat(planner.toPlace(0, 501).walkIn().orElseThrow().acrossWithoutConsent())
                .containsExactly("A-first", "B-late");
        assertThat(planner.toPlace(0, 501).words())
                .isEqualTo("300 m from R (road), to the true left bank; across A-first, B-late without consent");
    }

    @Test
    void aRoadOnParcelsWithoutConsentIsNoWayIn() {
        AccessPlanner planner =
                planner(road("R", "road", -100, 500, 100, 500), SOUTHWARD, land("closed", false, -50, 450, 50, 550));

        assertThat(planner.toPlace(0, 500).walkIn().orElseThrow().acrossWithoutConsent())
                .containsExactly("closed");
    }

    @Test
    void streamsOnTheWayAreCountedOnceEach() {
        LineSetBuilder streams = new LineSetBuilder();
        streams.add("S", new double[] {0, 1000, 0, 0}, 2);
        // Its vertex lies on the walk: two segments, one crossing.
        streams.add("Side", new double[] {120, 1000, 100, 500, 120, 0}, 3);
        AccessPlanner planner = planner(road("R", "road", 300, 1000, 300, 0), streams.build());

        assertThat(planner.toPlace(0, 500))
                .isInstanceOfSatisfying(Access.OnFoot.class, walk -> assertThat(walk.crossings())
                        .containsExactly(new StreamCrossing("Side", 200)));
        assertThat(planner.toPlace(0, 500).words())
                .isEqualTo(
                        "300 m from R (road), to the true left bank; meets Side after 200 m: look for a bridge, or count it"
                                + " as wading");
    }

    @Test
    void aBendOfTheSameStreamCanStandInTheWay() {
        LineSet bent = lines("S", 200, 900, 200, 450, 0, 450, 0, 550, 100, 550, 100, 800);
        Access access = planner(road("R", "road", 400, 1000, 400, 0), bent).toPlace(0, 700);

        assertThat(access.words()).startsWith("400 m from R").contains("meets S after 200 m");
    }

    @Test
    void theClimbCountsRisesAndLeavesOutTheGridsCoarseness() {
        Ground ridge = new Ground(
                place -> OptionalDouble.of(Math.rint(50 - Math.abs(place.eastM() - 100) / 5)
                        + (Math.rint(place.eastM()) % 20 == 0 ? 0.4 : 0)),
                10,
                1);
        AccessPlanner planner =
                new AccessPlanner(road("R", "road", 300, 1000, 300, 0), SOUTHWARD, ridge, List.of(), 2000);

        // From 10 m at E 300 over a ridge of 50 m at E 100 down to 30 m: 40 m up, 0.4 m of it the grid's own.
        assertThat(planner.toPlace(0, 500).walkIn().orElseThrow().climbM().orElseThrow())
                .isEqualTo(40, within(0.5));
    }

    @Test
    void theClimbIsNotKnownWhereTheGridHasAHole() {
        Ground holed = new Ground(
                place -> place.eastM() > 140 && place.eastM() < 160 ? OptionalDouble.empty() : OptionalDouble.of(5),
                10,
                1);

        assertThat(new AccessPlanner(road("R", "road", 300, 1000, 300, 0), SOUTHWARD, holed, List.of(), 2000)
                        .toPlace(0, 500)
                        .walkIn()
                        .orElseThrow()
                        .climbM())
                .isEmpty();
    }

    @Test
    void roadsThatMeetStreamsAreListedOnceEach() {
        LineSetBuilder roads = new LineSetBuilder();
        roads.add("vertex", new double[] {-50, 700, 0, 700, 50, 700}, 3);
        roads.add("across", new double[] {-50, 300, 50, 300}, 2);
        roads.add("beside", new double[] {50, 0, 50, 1000}, 2);

        assertThat(RoadCrossings.of(new Roads(roads.build(), List.of("track", "road", "road")), SOUTHWARD))
                .containsExactly(
                        new RoadCrossing(0, 300, "vertex", "track"), new RoadCrossing(0, 700, "across", "road"));
    }
}
