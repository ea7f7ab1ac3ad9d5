package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.Site;

class MethodFindingsTest {

    @Test
    void theCorrectedTableHasNothingToReport() {
        assertThat(findings(TestTables.corrected(), ScenarioSites.all())).isEmpty();
    }

    @Test
    void theTableAsReceivedIsReportedSiteBySite() {
        assertThat(findings(TestTables.received(), ScenarioSites.all()))
                .extracting(Problem::sentence)
                .containsExactly(
                        "method.dmn, site BRN-02: rules 5 and 12 fit BRN-02 and say EFISH, TRAP. "
                                + "Allowed: one rule, by hit policy UNIQUE. "
                                + "Do: ask who keeps the table which rule is meant, or decide yourself:"
                                + " methodOverrides in round.json, with the reason",
                        gap("BRN-03", "14"),
                        gap("HSK-02", "11"));
    }

    private static String gap(String site, String found) {
        String is = " and it is " + found + " µS/cm";
        return "method.dmn, site " + site + ": no rule fits " + site + ": "
                + "rules 5, 6, 7 and 8 want ambient conductivity at least 15 and at most 600 µS/cm" + is
                + "; rules 9 and 10 want ambient conductivity at least 600 µS/cm" + is
                + "; rule 11 wants ambient conductivity above 600 µS/cm" + is
                + ". Allowed: one rule for every site. Do: ask who keeps the table for a rule that covers it,"
                + " or decide yourself: methodOverrides in round.json, with the reason";
    }

    @Test
    void aSiteWithUnknownConditionsIsAskedAbout() {
        Conditions known = ScenarioSites.named("BRN-01").conditions();
        Conditions gap = new Conditions(
                known.widthM(),
                known.wetState(),
                known.depthVelocityM2S(),
                known.maxDepthM(),
                known.maxDepthSdM(),
                OptionalDouble.empty(),
                known.conductivitySdUsCm(),
                known.clarityM(),
                known.waterTempC());
        Site site = ScenarioSites.site("BRN-01", gap, Optional.of(true));
        assertThat(findings(TestTables.corrected(), List.of(site)))
                .extracting(Problem::sentence)
                .containsExactly(
                        "sites.csv, BRN-01: not known: ambient conductivity; the table could say EFISH, or SPOT. "
                                + "Allowed: a method by one rule. Do: find out: ambient conductivity");
    }

    private static List<Problem> findings(DecisionTable table, List<Site> sites) {
        return MethodFindings.of(table, MethodChooser.decide(table, sites, List.of()));
    }
}
