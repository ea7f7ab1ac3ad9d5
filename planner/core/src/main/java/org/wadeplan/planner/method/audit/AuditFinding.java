package org.wadeplan.planner.method.audit;

import java.util.List;
import java.util.Map;
import org.wadeplan.geo.problem.Severity;

/**
 * One thing that is wrong with a decision table.
 *
 * @param headline in a sentence
 * @param rules numbers of the rules on one side; none for a gap
 * @param others numbers of the rules on the other side, each of which meets each of {@code rules}; none where there is one
 *     side
 * @param region what all its cases have in common; what it does not name may be anything, or differs from rule to rule
 * @param example a case that shows it, as cells of the table, by input
 * @param exampleAnswer what the table says of that case
 * @param sites sites of the round that it concerns, most surely first
 * @param byPolicy what each hit policy of DMN would do with the example
 * @param mends ways to put it right, the smallest change first
 */
public record AuditFinding(
        FindingKind kind,
        Severity severity,
        String headline,
        List<Integer> rules,
        List<Integer> others,
        List<RegionPart> region,
        Map<String, String> example,
        String exampleAnswer,
        List<SiteHit> sites,
        List<String> byPolicy,
        List<String> mends) {

    /** How many sites lie in the region as planned. */
    public long hits() {
        return sites.stream().filter(site -> site.how() == SiteHit.How.HIT).count();
    }
}
