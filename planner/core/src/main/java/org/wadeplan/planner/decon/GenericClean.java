package org.wadeplan.planner.decon;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * The clean for kit from a water with no pest on record. Unknown counts as suspected, so it is never skipped: the soak that
 * the table supports against the most pests on every item of the set, the cheapest among equals. Items that no soak is
 * allowed on need a wipe or drying of their own, so a set that holds one has no generic soak.
 */
final class GenericClean {

    private final Biosecurity biosecurity;
    private final TreatmentChoice choice;

    GenericClean(Biosecurity biosecurity, TreatmentChoice choice) {
        this.biosecurity = biosecurity;
        this.choice = choice;
    }

    /** A soak, the pests that it covers on every item, and its steps. */
    record Generic(AppliedTreatment treatment, SortedSet<String> pests, List<DeconStep> steps, CleanCost cost) {}

    /** Empty where no soak of the table covers any pest on every one of the kinds. */
    Optional<Generic> of(List<ItemKind> kinds, DryingRules drying) {
        return choice.evidence().recipes().stream()
                .filter(recipe -> recipe.mode() == mode(kinds))
                .flatMap(recipe -> generic(recipe, kinds, drying).stream())
                .min(Comparator.comparingInt(
                                (Generic generic) -> -generic.pests().size())
                        .thenComparing(Generic::cost)
                        .thenComparing(generic -> generic.treatment().recipe(), Recipe.ORDER));
    }

    /** Soaks, for a set; wipes, where nothing of it may go into a bath. */
    private static TreatmentMode mode(List<ItemKind> kinds) {
        boolean noneImmersed = kinds.stream().allMatch(kind -> kind.gear()
                .filter(gear -> gear.immersion() != Immersion.WHOLE)
                .isPresent());
        return noneImmersed ? TreatmentMode.WIPE : TreatmentMode.SOAK;
    }

    private Optional<Generic> generic(Recipe recipe, List<ItemKind> kinds, DryingRules drying) {
        SortedSet<String> pests = new TreeSet<>();
        Optional<AppliedTreatment> applied = Optional.empty();
        for (Pest pest : biosecurity.pests()) {
            List<PestOnItem> pairs = PestOnItem.all(List.of(pest.id()), kinds, choice.evidence());
            List<Evidence> rows = pairs.stream()
                    .flatMap(pair -> choice.evidence().support(recipe, pair).stream())
                    .map(drying::applied)
                    .toList();
            if (rows.size() == pairs.size()) {
                pests.add(pest.id());
                for (Evidence row : rows) {
                    applied = Optional.of(
                            applied.map(held -> held.raisedTo(row)).orElseGet(() -> AppliedTreatment.of(row)));
                }
            }
        }
        return applied.map(treatment -> {
            List<AppliedTreatment> alone = List.of(treatment);
            List<DeconStep> steps = choice.sequence().around(alone);
            return new Generic(treatment, pests, steps, choice.price().of(steps, alone));
        });
    }
}
