package org.wadeplan.planner.method.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.round.Round;

/** The demo's two tables. Source of what is to be found: the invented scenario, verified there by enumeration of cells. */
class TableAuditReferenceTest {

    private static final String UNIQUE_AREA = "wet state flowing; depth times speed at most 0.9 m²/s";

    private static final Round ROUND = DemoRound.troubled();

    @Test
    void theTableAsReceivedHasExactlyTheFindingsOfTheScenarioInItsOrder() {
        assertThat(TableAudit.audit(table("method_received.dmn"), ROUND).findings())
                .extracting(TableAuditReferenceTest::line)
                .containsExactly(
                        "ERROR gap: No rule matches"
                                + " | " + UNIQUE_AREA
                                + "; deepest point at most 0.7 m; ambient conductivity below 15 µS/cm"
                                + " | BRN-03 HIT, HSK-02 HIT",
                        "ERROR contradiction: Rules 5, 6, 7 and 9 each contradict rule 12:"
                                + " EFISH, EFISH_AM, DEFER and SPOT against TRAP"
                                + " | deepest point above 0.7 and at most 0.8 m; " + UNIQUE_AREA
                                + " | BRN-02 HIT, OUN-03 NEAR, PEL-02 NEAR",
                        "ERROR contradiction at a limit: Rules 5, 6 and 7 each contradict rules 9 and 10:"
                                + " EFISH, EFISH_AM and DEFER against SPOT and TRAP"
                                + " | ambient conductivity exactly 600 µS/cm; " + UNIQUE_AREA
                                + "; deepest point at most 0.8 m; clarity at least 1 m"
                                + " | OUN-03 NEAR",
                        "WARNING overlap with the same output: Rules 8, 10 and 11 each overlap rule 12; all say TRAP"
                                + " | deepest point above 0.7 and at most 0.8 m; " + UNIQUE_AREA
                                + " | OUN-03 NEAR, PEL-02 NEAR",
                        "WARNING redundant rule: Rule 14 lies inside rule 5 and says the same, EFISH"
                                + " | " + UNIQUE_AREA + "; deepest point at most 0.4 m;"
                                + " ambient conductivity at least 100 and at most 300 µS/cm; clarity at least 0.8 m;"
                                + " water temperature at most 18 °C | ");
    }

    @Test
    void theCorrectedTableHasNone() {
        AuditReport report = TableAudit.audit(table("method.dmn"), ROUND);
        assertThat(report.findings()).isEmpty();
        assertThat(report.complete()).isTrue();
    }

    @Test
    void aRuleTakenAwayLeavesOneGapOfItsOwnCases() {
        DecisionTable whole = table("method.dmn");
        for (int number = 1; number <= 16; number++) {
            AuditReport report = TableAudit.audit(TableEdits.without(whole, number));
            assertThat(report.findings()).as("without rule %d", number).hasSize(1);
            AuditFinding gap = report.findings().get(0);
            assertThat(gap.kind()).isEqualTo(FindingKind.GAP);
            assertThat(gap.region().stream().map(RegionPart::cell).toList())
                    .as("without rule %d", number)
                    .isEqualTo(TableEdits.askedCells(whole, number));
        }
    }

    @Test
    void aLimitMovedByOneIsFoundWhereverItStands() {
        DecisionTable whole = table("method.dmn");
        List<DecisionTable> moved = TableEdits.everyLimitMovedByOne(whole);
        assertThat(moved).hasSizeGreaterThan(100);
        moved.forEach(
                table -> assertThat(TableAudit.audit(table).findings().stream().map(AuditFinding::severity))
                        .as(TableEdits.difference(whole, table))
                        .containsAnyOf(Severity.ERROR, Severity.WARNING));
    }

    private static String line(AuditFinding finding) {
        return finding.severity() + " " + finding.kind().words() + ": " + finding.headline() + " | "
                + finding.region().stream().map(RegionPart::words).collect(Collectors.joining("; ")) + " | "
                + finding.sites().stream()
                        .map(site -> site.site() + " " + site.how())
                        .collect(Collectors.joining(", "));
    }

    private static DecisionTable table(String name) {
        Path file = DemoRound.folder("ilvermoor-troubled").resolve(name);
        return DecisionTableReader.read(file, name).value().orElseThrow();
    }
}
