package org.wadeplan.planner.decon;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Branch and bound over sets of applied treatments. Each step takes the first pair that the set at hand does not do and tries
 * every row that would; raising a treatment never makes a clean cheaper, so a set that costs more than the best is dropped.
 */
final class CoverSearch {

    private final List<List<Evidence>> options;
    private final StepSequence sequence;
    private final ChemicalCautions cautions;
    private final int mostSets;
    private final Set<SortedMap<Recipe, AppliedTreatment>> seen = new HashSet<>();
    private @Nullable Found best;

    /** A whole set with what it costs. */
    record Found(List<AppliedTreatment> treatments, List<DeconStep> steps, CleanCost cost) {}

    /** @param options for each pair the rows that support something against it; none of them empty */
    CoverSearch(List<List<Evidence>> options, StepSequence sequence, ChemicalCautions cautions, int mostSets) {
        this.options =
                options.stream().sorted(Comparator.comparingInt(List::size)).toList();
        this.sequence = sequence;
        this.cautions = cautions;
        this.mostSets = mostSets;
    }

    /** The cheapest set, the first in order of recipes among equals; empty where only clashing agents would do. */
    Optional<Found> cheapest() {
        extend(new TreeMap<>(Recipe.ORDER));
        return Optional.ofNullable(best);
    }

    /** False where the search was cut short, so that a cheaper set may exist. */
    boolean complete() {
        return seen.size() < mostSets;
    }

    private void extend(SortedMap<Recipe, AppliedTreatment> set) {
        if (!complete() || !seen.add(set)) {
            return;
        }
        List<AppliedTreatment> treatments = List.copyOf(set.values());
        List<DeconStep> steps = sequence.around(treatments);
        CleanCost cost = sequence.cost(steps, treatments.size());
        if (best != null && cost.compareTo(best.cost()) > 0) {
            return;
        }
        Optional<List<Evidence>> undone =
                options.stream().filter(rows -> !done(rows, treatments)).findFirst();
        if (undone.isEmpty()) {
            keep(new Found(treatments, steps, cost));
            return;
        }
        undone.get().forEach(row -> branch(set, row));
    }

    private void branch(SortedMap<Recipe, AppliedTreatment> set, Evidence row) {
        boolean clashes = set.keySet().stream().anyMatch(other -> cautions.mustNeverMeet(
                        other.agent(), row.recipe().agent())
                .isPresent());
        if (clashes) {
            return;
        }
        SortedMap<Recipe, AppliedTreatment> next = new TreeMap<>(set);
        next.merge(row.recipe(), AppliedTreatment.of(row), (held, fresh) -> held.raisedTo(row));
        extend(next);
    }

    private static boolean done(List<Evidence> rows, List<AppliedTreatment> treatments) {
        return rows.stream().anyMatch(row -> treatments.stream().anyMatch(treatment -> treatment.does(row)));
    }

    private void keep(Found found) {
        Found held = best;
        if (held == null
                || found.cost().compareTo(held.cost()) < 0
                || (found.cost().equals(held.cost()) && names(found).compareTo(names(held)) < 0)) {
            best = found;
        }
    }

    private static String names(Found found) {
        return found.treatments().stream()
                .map(treatment -> treatment.recipe().words())
                .reduce("", (left, right) -> left + "\n" + right);
    }
}
