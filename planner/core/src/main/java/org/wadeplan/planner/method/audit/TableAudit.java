package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.round.Round;

/**
 * Audits a decision table exactly: the cases are cut into boxes at every limit that a cell names, limits themselves being
 * pieces of their own, so that what is found holds for every case and nothing falls between samples. The idea of sweeping
 * over boxes is that of Calvanese, Dumas, Laurson, Maggi, Montali and Teinemaa, Semantics, analysis and simplification of
 * DMN decision tables, Information Systems 78 (2018).
 */
public final class TableAudit {

    private static final Comparator<AuditFinding> WORST_FIRST = Comparator.comparing(AuditFinding::severity)
            .thenComparing(finding -> finding.hits() == 0)
            .thenComparing(AuditFinding::kind)
            .thenComparing(Comparator.comparing(AuditFinding::hits).reversed());

    private TableAudit() {}

    /** A table by itself, without sites. */
    public static AuditReport audit(DecisionTable table) {
        return audit(table, List.of());
    }

    /** A table with the sites of a round, which need not be the round's own table. */
    public static AuditReport audit(DecisionTable table, Round round) {
        return audit(table, SiteCase.of(round));
    }

    /** A table with the cases that it is to decide. */
    public static AuditReport audit(DecisionTable table, List<SiteCase> sites) {
        AuditedTable audited = AuditedTable.of(table);
        Overlaps overlaps = new Overlaps(audited);
        Rows rows = new Rows(audited, overlaps);
        GapFinder gaps = new GapFinder(audited, sites);
        List<AuditFinding> findings = new ArrayList<>(gaps.findings());
        findings.addAll(new MeetingFinder(audited, sites, overlaps.meetings(rows.redundant())).findings());
        findings.addAll(new RowFinder(audited, sites, rows).findings());
        List<AuditReport.Domain> domains = audited.space().columns().stream()
                .map(column -> new AuditReport.Domain(
                        column.input().name(),
                        column.domain().words(),
                        column.domain().declared()))
                .toList();
        return new AuditReport(
                table.file(),
                table.name(),
                table.hash(),
                table.hitPolicy().word(),
                table.rules().size(),
                domains,
                findings.stream().sorted(WORST_FIRST).toList(),
                gaps.complete() && overlaps.complete());
    }
}
