package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitListTest {

    private static final DrawFrame FRAME = DrawFrames.INVENTED.byOrder();
    private static final Draw DRAW = BalancedDraw.draw(
                    FRAME, new DrawDesign(8, 50, new Allocation.Equal(), DrawDesign.USUAL_UNIT_M, 150, 3))
            .value()
            .orElseThrow();

    private static VisitList with(Map<String, Loss.Ground> lost) {
        return VisitList.of(
                DRAW, unit -> Optional.ofNullable(lost.get(unit.code())).map(ground -> new Loss(ground, "as told")));
    }

    private static List<String> words(VisitList list) {
        return list.entries().stream()
                .map(entry -> entry.unit().code() + " " + entry.use()
                        + entry.standsInFor().map(code -> " for " + code).orElse(""))
                .toList();
    }

    @Test
    void withoutLossesTheBaseIsVisitedAndTheReservesAreHeld() {
        VisitList list = with(Map.of());

        assertThat(words(list))
                .containsExactly(
                        "D001 VISIT",
                        "D002 VISIT",
                        "D003 VISIT",
                        "D004 VISIT",
                        "R001 HELD",
                        "R002 HELD",
                        "D005 VISIT",
                        "D006 VISIT",
                        "D007 VISIT",
                        "D008 VISIT",
                        "R005 HELD",
                        "R006 HELD");
        for (int i = 0; i < 2; i++) {
            StratumRecord stratum = DRAW.strata().get(i);
            assertThat(list.strata().get(i))
                    .isEqualTo(
                            new StratumVisits(stratum.stratum(), 4, 0, 0, 4, 0, stratum.lengthM(), stratum.weightM()));
        }
    }

    @Test
    void reservesStandInInOrderAndOnlyInTheirOwnStratum() {
        assertThat(words(with(Map.of("D006", Loss.Ground.DRY, "R005", Loss.Ground.DENIED))))
                .containsExactly(
                        "D001 VISIT",
                        "D002 VISIT",
                        "D003 VISIT",
                        "D004 VISIT",
                        "R001 HELD",
                        "R002 HELD",
                        "D005 VISIT",
                        "D006 LOST",
                        "D007 VISIT",
                        "D008 VISIT",
                        "R005 LOST",
                        "R006 VISIT for D006");
    }

    /** By hand: of six evaluated two are no target, so four sixths of the length are, shared by two visits. */
    @Test
    void weightsFollowTheUnitsEvaluated() {
        StratumRecord stratum = DRAW.strata().get(0);
        VisitList list = with(Map.of(
                "D001",
                Loss.Ground.DRY,
                "D003",
                Loss.Ground.DENIED,
                "R001",
                Loss.Ground.NO_REACH,
                "R002",
                Loss.Ground.NON_TARGET));
        StratumVisits visits = list.strata().get(0);

        assertThat(visits.evaluated()).isEqualTo(6);
        assertThat(visits.nonTarget()).isEqualTo(2);
        assertThat(visits.missed()).isEqualTo(2);
        assertThat(visits.visited()).isEqualTo(2);
        assertThat(visits.shortBy()).isEqualTo(2);
        assertThat(visits.targetLengthM()).isEqualTo(stratum.lengthM() * 4 / 6, within(1e-9));
        assertThat(visits.weightM()).isEqualTo(stratum.lengthM() / 3, within(1e-9));
        assertThat(list.strata().get(1).weightM())
                .isEqualTo(DRAW.strata().get(1).weightM());
    }

    @Test
    void aStratumWithoutAnyVisitWeighsNothing() {
        VisitList list = VisitList.of(DRAW, unit -> Optional.of(new Loss(Loss.Ground.DRY, "dry summer")));

        assertThat(list.strata()).allSatisfy(visits -> {
            assertThat(visits.visited()).isZero();
            assertThat(visits.weightM()).isZero();
            assertThat(visits.targetLengthM()).isZero();
            assertThat(visits.shortBy()).isEqualTo(4);
        });
    }
}
