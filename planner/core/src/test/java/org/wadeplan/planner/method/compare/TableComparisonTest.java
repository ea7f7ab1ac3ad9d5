package org.wadeplan.planner.method.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.audit.SmallTable;
import org.wadeplan.planner.method.walk.ReachShift;
import org.wadeplan.planner.method.walk.WalkOver;
import org.wadeplan.planner.round.DepthPoint;
import org.wadeplan.planner.round.Round;

class TableComparisonTest {

    private static final DecisionTable OLD = SmallTable.of(HitPolicy.UNIQUE, "<=2|-|-|-|A", ">2|-|-|-|B");
    private static final DecisionTable NEW = SmallTable.of(HitPolicy.UNIQUE, "<=1|-|-|-|A", ">1|-|-|-|B");
    private static final SiteCase BETWEEN = site(1.5);

    @Test
    void aLimitThatMovedChangesTheCasesBetween() {
        TableComparison comparison = TableComparison.of(OLD, NEW, List.of(BETWEEN, site(0.5)));
        assertThat(comparison.regions())
                .containsExactly(new RegionChange(List.of("depth above 1 and at most 2"), "A", "B"));
        assertThat(comparison.sites())
                .containsExactly(new SiteChange(
                        "X",
                        "A by rule 1",
                        "B by rule 2",
                        List.of(
                                "now rule 1 fails at depth 1.5, not in at most 1",
                                "before rule 2 fails at depth 1.5, not in above 2")));
        assertThat(comparison.cells())
                .containsExactly("rule 1 (rule 1), depth: <=2 became <=1", "rule 2 (rule 2), depth: >2 became >1");
        assertThat(comparison.complete()).isTrue();
    }

    @Test
    void theSameTableChangesNothing() {
        assertThat(TableComparison.of(OLD, OLD, List.of(BETWEEN)))
                .isEqualTo(new TableComparison(List.of(), List.of(), List.of(), true));
    }

    @Test
    void anotherOrderOfRulesChangesNothingWhereNoneOverlap() {
        DecisionTable turned = SmallTable.of(HitPolicy.FIRST, ">2|-|-|-|B", "<=2|-|-|-|A");
        assertThat(TableComparison.of(OLD, turned, List.of()).regions()).isEmpty();
    }

    /** Source: the scenario: a pool of more than 0.8 m gives TRAP by rule 15 in place of EFISH by rule 5. */
    @Test
    void aPoolFoundOnArrivalFlipsTheMethodAndAShiftAvoidsIt() {
        Round round = DemoRound.resolved();
        SiteCase pools = SiteCase.of(round).stream()
                .filter(site -> site.site().equals("BRN-02"))
                .findFirst()
                .orElseThrow();
        Map<String, CaseValue> reading = Map.of("max_depth_m", CaseValue.of(0.9));
        WalkOver walk = WalkOver.of(round.methodTable(), pools, reading);
        assertThat(walk.flipped()).isTrue();
        assertThat(walk.causes()).containsExactly("rule 5 fails at deepest point 0.9 m, not in at most 0.8 m");
        List<DepthPoint> depths = List.of(
                new DepthPoint("BRN-02", -60, 0.5),
                new DepthPoint("BRN-02", 20, 0.9),
                new DepthPoint("BRN-02", 60, 0.5),
                new DepthPoint("BRN-02", 260, 0.6));
        // The pool at 20 m counts up to halfway to its neighbour at 60 m: the reach must start at 40 m or above.
        assertThat(ReachShift.smallest(round.methodTable(), pools.measured(reading), depths, 150, "EFISH"))
                .isEqualTo(Optional.of(new ReachShift(40, 0.6)));
        assertThat(ReachShift.smallest(
                        round.methodTable(), pools.measured(reading), depths.subList(0, 3), 150, "EFISH"))
                .isEmpty();
    }

    private static SiteCase site(double depthM) {
        return new SiteCase(
                "X",
                Map.of(
                        "depth", CaseValue.of(depthM),
                        "speed", CaseValue.of(1),
                        "bed", CaseValue.of("mud"),
                        "night", CaseValue.of(true)),
                Map.of());
    }
}
