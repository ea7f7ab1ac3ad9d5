package org.wadeplan.planner.method.audit;

import java.util.List;
import org.wadeplan.geo.problem.Severity;

/**
 * What an audit of one table found.
 *
 * @param file the table's file
 * @param table its name
 * @param hash SHA-256 of the file, 64 hexadecimal characters
 * @param domains which values were looked at, by input
 * @param findings worst first
 * @param complete false where there is more than was listed; what is listed is right all the same
 */
public record AuditReport(
        String file,
        String table,
        String hash,
        String hitPolicy,
        int ruleCount,
        List<Domain> domains,
        List<AuditFinding> findings,
        boolean complete) {

    /**
     * Which values of one input were looked at.
     *
     * @param words the values that were looked at
     * @param declared whether the table says so; else it was assumed
     */
    public record Domain(String input, String words, boolean declared) {}

    public boolean hasErrors() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }
}
