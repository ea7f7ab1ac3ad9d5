package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.planner.round.KitSet;

/**
 * What else would get the crew there where nothing covers a kit set's leg. Each way is worked out as a turnaround of its own
 * before it is named. Longer drying needs no way of its own: drying takes part in every choice, for as long as its row and
 * the place's rules ask.
 */
final class WaysOut {

    private final TransferRules rules;
    private final List<KitSet> kitSets;

    WaysOut(TransferRules rules, List<KitSet> kitSets) {
        this.rules = rules;
        this.kitSets = List.copyOf(kitSets);
    }

    /** A sentence for the reason, with a blank before it. */
    String words(KitSet kitSet, Turnaround refused, Collection<String> fromWaters) {
        List<String> ways = new ArrayList<>();
        otherKitSets(kitSet, fromWaters, refused.toWater()).ifPresent(ways::add);
        otherOrder(kitSet, fromWaters, refused.toWater()).ifPresent(ways::add);
        ways.addAll(withoutItems(kitSet, fromWaters, refused.toWater()));
        return ways.isEmpty()
                ? " No way out was found: no other kit set, order of waters or smaller set of items can be covered; keep it"
                        + " out of " + refused.toWater() + "."
                : " Ways out: " + String.join("; ", ways) + ".";
    }

    private Optional<String> otherKitSets(KitSet kitSet, Collection<String> from, String to) {
        List<String> fit = kitSets.stream()
                .filter(other -> !other.id().equals(kitSet.id()) && other.purpose() == kitSet.purpose())
                .flatMap(other -> minutes(rules.needed(other, rules.itemsOf(other), from, to))
                        .map(minutes -> other.id() + " (" + minutes + ")")
                        .stream())
                .toList();
        return fit.isEmpty()
                ? Optional.empty()
                : Optional.of("use a kit set that can be cleaned for it, " + Words.list(fit));
    }

    private Optional<String> otherOrder(KitSet kitSet, Collection<String> from, String to) {
        List<String> others =
                new TreeSet<>(from).stream().filter(water -> !water.equals(to)).toList();
        boolean allFit = !others.isEmpty()
                && others.stream().allMatch(water -> rules.needed(kitSet, rules.itemsOf(kitSet), List.of(to), water)
                        .possible());
        return allFit
                ? Optional.of("work " + to + " before " + Words.list(others) + ", a clean that the table covers")
                : Optional.empty();
    }

    private List<String> withoutItems(KitSet kitSet, Collection<String> from, String to) {
        List<String> ways = new ArrayList<>();
        List<ItemKind> items = rules.itemsOf(kitSet);
        for (ItemKind left : items) {
            List<ItemKind> rest =
                    items.stream().filter(kind -> !kind.equals(left)).toList();
            if (!left.kinds().isEmpty() && !rest.isEmpty()) {
                minutes(rules.needed(kitSet, rest, from, to))
                        .ifPresent(minutes ->
                                ways.add("leave " + left.words() + " behind, and clean the rest (" + minutes + ")"));
            }
        }
        return ways;
    }

    private static Optional<String> minutes(Turnaround way) {
        return way.possible()
                ? Optional.of(way.crewMin() + " min and " + Words.number(way.unattendedMin() / 60.0) + " h alone")
                : Optional.empty();
    }
}
