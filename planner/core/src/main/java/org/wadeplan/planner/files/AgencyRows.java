package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/**
 * Turns a place's instruction into rows of evidence of grade C, so that whoever asks the table finds it there. A treatment
 * needs a supporting row for some pest, which says how it is made up and applied; a pest and material that has a row of its
 * own for that treatment keeps it. An instruction that names no pest adds nothing: that would be a claim about every pest.
 */
final class AgencyRows {

    private AgencyRows() {}

    /**
     * The rows with those that the rules add behind them.
     *
     * @param rows about the round's own pests
     * @param every every row of the table
     */
    static List<Treatment> with(List<Treatment> rows, List<Treatment> every, List<DeconRule> rules, Set<String> pests) {
        List<Treatment> all = new ArrayList<>(rows);
        for (DeconRule rule : rules) {
            if (rule.kind() == DeconRule.Kind.AGENCY_TREATMENT) {
                for (String pest : rule.pests()) {
                    for (Material material : Material.values()) {
                        if (pests.contains(pest)) {
                            added(rule, pest, material, rows, every).ifPresent(all::add);
                        }
                    }
                }
            }
        }
        return List.copyOf(all);
    }

    private static Optional<Treatment> added(
            DeconRule rule, String pest, Material material, List<Treatment> rows, List<Treatment> every) {
        String id = rule.treatment().orElse("");
        boolean own = rows.stream()
                .anyMatch(row -> row.id().equals(id) && row.pest().equals(pest) && row.material() == material);
        return own
                ? Optional.empty()
                : every.stream()
                        .filter(row ->
                                row.id().equals(id) && row.material() == material && row.grade() != EvidenceGrade.X)
                        .max((a, b) -> Double.compare(a.contactMin(), b.contactMin()))
                        .map(like -> row(rule, pest, like));
    }

    private static Treatment row(DeconRule rule, String pest, Treatment like) {
        return new Treatment(
                like.id(),
                pest,
                like.material(),
                like.agent(),
                like.strength(),
                like.strengthBasis(),
                like.tempC(),
                like.mode(),
                Math.max(like.contactMin(), rule.value().orElse(0)),
                like.dryingH(),
                like.pickFirst(),
                EvidenceGrade.C,
                "rule " + rule.id() + ": " + rule.source(),
                Optional.empty(),
                rule.validity());
    }
}
