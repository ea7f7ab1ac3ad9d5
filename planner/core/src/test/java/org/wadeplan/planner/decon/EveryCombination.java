package org.wadeplan.planner.decon;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Every way of giving each pair one of its rows, without bounds and without order. */
final class EveryCombination {

    private final List<List<Evidence>> options;
    private final StepSequence sequence;
    private final CleanPrice price;
    private final Predicate<SortedMap<Recipe, AppliedTreatment>> clash;

    EveryCombination(
            List<List<Evidence>> options,
            StepSequence sequence,
            CleanPrice price,
            Predicate<SortedMap<Recipe, AppliedTreatment>> clash) {
        this.options = options;
        this.sequence = sequence;
        this.price = price;
        this.clash = clash;
    }

    Optional<CleanCost> cheapest() {
        Set<SortedMap<Recipe, AppliedTreatment>> sets = new LinkedHashSet<>();
        sets.add(new TreeMap<>(Recipe.ORDER));
        for (List<Evidence> rows : options) {
            Set<SortedMap<Recipe, AppliedTreatment>> next = new LinkedHashSet<>();
            for (SortedMap<Recipe, AppliedTreatment> set : sets) {
                for (Evidence row : rows) {
                    SortedMap<Recipe, AppliedTreatment> more = new TreeMap<>(set);
                    more.merge(row.recipe(), AppliedTreatment.of(row), (held, fresh) -> held.raisedTo(row));
                    next.add(more);
                }
            }
            sets = next;
        }
        return sets.stream()
                .filter(set -> !clash.test(set))
                .map(set -> price.of(sequence.around(List.copyOf(set.values())), List.copyOf(set.values())))
                .min(CleanCost::compareTo);
    }
}
