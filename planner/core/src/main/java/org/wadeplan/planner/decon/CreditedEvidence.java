package org.wadeplan.planner.decon;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** What the round's table of treatments supports, asked about a treatment as it was really done. */
public final class CreditedEvidence {

    private final Biosecurity biosecurity;
    private final EvidenceTable table;

    public CreditedEvidence(Biosecurity biosecurity) {
        this.biosecurity = biosecurity;
        this.table = new EvidenceTable(biosecurity.treatments());
    }

    /**
     * What a row asks for and supports.
     *
     * @param contactMin minutes of contact, all surfaces wet
     * @param dryingH hours of drying after that, from dry to the touch
     */
    public record Support(
            Recipe recipe,
            String pest,
            Material material,
            EvidenceGrade grade,
            double contactMin,
            double dryingH,
            boolean pickFirst,
            String source) {}

    /** True where any row names the treatment, in whatever mode. */
    public boolean knows(String treatment) {
        return biosecurity.treatments().stream().anyMatch(row -> row.id().equals(treatment));
    }

    /** The ways in which the table knows the treatment in this mode, those that only rows of grade X name left out. */
    public List<Recipe> recipes(String treatment, TreatmentMode mode) {
        return biosecurity.treatments().stream()
                .filter(row -> row.id().equals(treatment) && row.mode() == mode && row.grade() != EvidenceGrade.X)
                .map(Recipe::of)
                .distinct()
                .sorted(Recipe.ORDER)
                .toList();
    }

    /** Empty where no row supports it, or a row of grade X blocks it. */
    public Optional<Support> support(Recipe recipe, String pest, Material material) {
        return table.support(recipe, new PestOnMaterial(pest, material))
                .map(row -> new Support(
                        recipe,
                        pest,
                        material,
                        row.grade(),
                        row.contactMin(),
                        row.dryingH(),
                        row.pickFirst(),
                        row.source()));
    }

    /** Rows that tested what was done, by agent and mode under whatever name, and found it not effective. */
    public List<Treatment> foundNotEffective(String treatment, TreatmentMode mode) {
        List<String> agents = biosecurity.treatments().stream()
                .filter(row -> row.id().equals(treatment))
                .map(Treatment::agent)
                .distinct()
                .toList();
        return biosecurity.treatments().stream()
                .filter(row -> row.grade() == EvidenceGrade.X
                        && row.mode() == mode
                        && (row.id().equals(treatment) || agents.contains(row.agent())))
                .toList();
    }
}
