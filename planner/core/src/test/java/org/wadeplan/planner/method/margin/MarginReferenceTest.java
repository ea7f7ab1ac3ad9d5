package org.wadeplan.planner.method.margin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.audit.SmallTable;
import org.wadeplan.planner.round.Round;

class MarginReferenceTest {

    private static final Round ROUND = DemoRound.resolved();

    /** The chance that a normal value with mean 585 and standard deviation 40 lies above 600, 0.375 deviations up. */
    private static final double ABOVE_600 = 1 - NormalCurve.upTo(0.375);

    @Test
    void theNormalCurveAgreesWithPublishedTables() {
        ReferenceTable.read("normal-curve.csv").forEach(row -> assertThat(NormalCurve.upTo(row.number("z")))
                .as(row.text("id"))
                .isCloseTo(row.number("expected"), within(row.number("tolerance") + 1e-18)));
    }

    /** Source: the scenario's own margins: BRN-02 flips to TRAP at +0.06 m, BRN-03 to EFISH at +1 uS/cm. */
    @Test
    void theDemosCloseSitesFlipWhereTheScenarioSays() {
        assertThat(flips("BRN-02", "max_depth_m"))
                .containsExactly("more than +0.06 m (0.75 times its uncertainty) gives TRAP");
        assertThat(flips("BRN-03", "conductivity_us_cm"))
                .containsExactly("+1 µS/cm (0.50 times its uncertainty) gives EFISH");
        assertThat(margin("BRN-02").joint().map(JointFlip::changes))
                .isEqualTo(Optional.of(List.of("deepest point more than +0.06 m")));
    }

    /** Source: the scenario: about 35 % that OUN-03 is above 600; the depth of 0.66 m, give or take 0.06, adds a little. */
    @Test
    void oneSiteInThreeWouldBeTrappedWhereConductivityStandsCloseToItsLimit() {
        double deeper = 1 - NormalCurve.upTo((0.8 - 0.66) / 0.06);
        Map<String, Double> chances = margin("OUN-03").chances().stream()
                .collect(Collectors.toMap(OutcomeChance::outcome, OutcomeChance::chance));
        assertThat(ABOVE_600).isCloseTo(0.3538, within(0.00005));
        assertThat(chances.get("TRAP")).isCloseTo(1 - (1 - ABOVE_600) * (1 - deeper), within(1e-9));
        assertThat(chances.get("EFISH")).isCloseTo((1 - ABOVE_600) * (1 - deeper), within(1e-9));
    }

    @Test
    void chancesOfTwoIndependentValuesMultiply() {
        SiteCase site = new SiteCase(
                "X",
                Map.of(
                        "depth", CaseValue.of(2),
                        "speed", CaseValue.of(5),
                        "bed", CaseValue.of("mud"),
                        "night", CaseValue.of(true)),
                Map.of("depth", 0.001, "speed", 2.0));
        SiteMargin margin = MarginFinder.of(
                        SmallTable.of(HitPolicy.UNIQUE, "<2|<7|-|-|A", "<2|>=7|-|-|B", ">=2|<7|-|-|C", ">=2|>=7|-|-|B"))
                .margin(site);
        double seven = NormalCurve.upTo(1);
        assertThat(margin.chances()).extracting(OutcomeChance::outcome).containsExactly("A", "C", "B");
        assertThat(margin.chances().get(0).chance()).isCloseTo(0.5 * seven, within(1e-12));
        assertThat(margin.chances().get(2).chance()).isCloseTo(1 - seven, within(1e-12));
        assertThat(margin.outcome()).isEqualTo("C");
        assertThat(margin.joint().map(JointFlip::changes)).isEqualTo(Optional.of(List.of("depth by any amount")));
    }

    @Test
    void whatIsNotKnownIsNamedAndNothingIsWorkedOut() {
        SiteMargin margin = MarginFinder.of(SmallTable.of(HitPolicy.UNIQUE, "<2|-|-|-|A", ">=2|-|-|-|B"))
                .margin(new SiteCase("X", Map.of("speed", CaseValue.of(1)), Map.of()));
        assertThat(margin.unknown()).containsExactly("depth");
        assertThat(margin.chances()).isEmpty();
    }

    private static SiteMargin margin(String id) {
        SiteCase site = SiteCase.of(ROUND).stream()
                .filter(one -> one.site().equals(id))
                .findFirst()
                .orElseThrow();
        return MarginFinder.of(ROUND.methodTable()).margin(site);
    }

    private static List<String> flips(String id, String input) {
        return margin(id).inputs().stream()
                .filter(one -> one.input().equals(input))
                .flatMap(one -> one.flips().stream())
                .map(MarginWords::flip)
                .toList();
    }
}
