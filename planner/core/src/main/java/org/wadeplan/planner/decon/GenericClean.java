package org.wadeplan.planner.decon;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * The clean for kit from a water with no pest on record. Unknown counts as suspected, so it is never skipped: the soak that
 * the table supports against the most pests on every material of the set, the cheapest among equals.
 */
final class GenericClean {

    private final Biosecurity biosecurity;
    private final EvidenceTable evidence;
    private final StepSequence sequence;

    GenericClean(Biosecurity biosecurity) {
        this.biosecurity = biosecurity;
        this.evidence = new EvidenceTable(biosecurity.treatments());
        this.sequence = new StepSequence(biosecurity);
    }

    /** A soak, the pests that it covers on every material, and its steps. */
    record Generic(AppliedTreatment treatment, SortedSet<String> pests, List<DeconStep> steps, CleanCost cost) {}

    /** Empty where no soak of the table covers any pest on every one of the materials. */
    Optional<Generic> of(Collection<Material> materials) {
        return evidence.recipes().stream()
                .filter(recipe -> recipe.mode() == TreatmentMode.SOAK)
                .flatMap(recipe -> generic(recipe, materials).stream())
                .min(Comparator.comparingInt(
                                (Generic generic) -> -generic.pests().size())
                        .thenComparing(Generic::cost)
                        .thenComparing(generic -> generic.treatment().recipe(), Recipe.ORDER));
    }

    private Optional<Generic> generic(Recipe recipe, Collection<Material> materials) {
        SortedSet<String> pests = new TreeSet<>();
        Optional<AppliedTreatment> applied = Optional.empty();
        for (Pest pest : biosecurity.pests()) {
            List<Evidence> rows = PestOnMaterial.pairs(List.of(pest.id()), materials).stream()
                    .flatMap(pair -> evidence.support(recipe, pair).stream())
                    .toList();
            if (rows.size() == materials.size()) {
                pests.add(pest.id());
                for (Evidence row : rows) {
                    applied = Optional.of(
                            applied.map(held -> held.raisedTo(row)).orElseGet(() -> AppliedTreatment.of(row)));
                }
            }
        }
        return applied.map(treatment -> {
            List<DeconStep> steps = sequence.around(List.of(treatment));
            return new Generic(treatment, pests, steps, sequence.cost(steps, 1));
        });
    }
}
