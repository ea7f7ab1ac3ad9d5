package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * What becomes of an item outside the kit sets when the set that it was used with is cleaned. It goes into the set's bath
 * where it bears that; where it must not be immersed it is wiped, by a row that says so; where no row does, or nobody knows
 * what it bears, nothing is credited. Another person wipes while the set soaks, so it adds nothing to the crew's time.
 */
public final class LooseGear {

    private static final Comparator<Evidence> BEST_THEN_QUICKEST = Comparator.comparing(Evidence::grade)
            .thenComparingDouble(Evidence::contactMin)
            .thenComparing(Evidence::recipe, Recipe.ORDER);

    private final Round round;
    private final EvidenceTable evidence;

    /** What an item gets. */
    public sealed interface Care {

        /** It goes into the bath with the set. */
        record SoakedAlong(List<Turnaround.Cover> covers) implements Care {}

        /**
         * It is wiped, and kept wet for the longest of the contact times.
         *
         * @param treatments one for each agent that it takes
         */
        record Wiped(List<AppliedTreatment> treatments, List<Turnaround.Cover> covers) implements Care {}

        /** No row covers it: it stays with the water that it was in. */
        record NotCovered(List<String> why) implements Care {}
    }

    public LooseGear(Round round) {
        this.round = round;
        this.evidence = new EvidenceTable(round.biosecurity(), round.header().firstDay());
    }

    /**
     * What the item gets.
     *
     * @param setCovers what the set's cleaning covers
     */
    public Care with(StoreItem item, Collection<Turnaround.Cover> setCovers) {
        ItemKind kind = ItemKind.alone(item, round.biosecurity().gear());
        if (kind.gear().isEmpty()) {
            return new Care.NotCovered(
                    List.of("whether it may be immersed is not on file: give it a gear_class in store.csv"));
        }
        List<Turnaround.Cover> own = setCovers.stream()
                .filter(cover -> cover.material() == kind.material())
                .toList();
        boolean all = pests(own).equals(pests(setCovers));
        return all && !own.isEmpty() && bearsAll(kind, own) ? new Care.SoakedAlong(own) : wiped(kind, pests(setCovers));
    }

    private static SortedSet<String> pests(Collection<Turnaround.Cover> covers) {
        SortedSet<String> pests = new TreeSet<>();
        covers.forEach(cover -> pests.add(cover.pest()));
        return pests;
    }

    private boolean bearsAll(ItemKind kind, List<Turnaround.Cover> covers) {
        GearClass gear = kind.gear().orElseThrow();
        return covers.stream().allMatch(cover -> recipes(cover.treatment()).stream()
                .allMatch(recipe -> GearLimits.bars(gear, recipe).isEmpty()));
    }

    private List<Recipe> recipes(String treatment) {
        return round.biosecurity().treatments().stream()
                .filter(row -> row.id().equals(treatment))
                .map(Recipe::of)
                .distinct()
                .toList();
    }

    private Care wiped(ItemKind kind, Collection<String> pests) {
        SortedMap<Recipe, AppliedTreatment> treatments = new TreeMap<>(Recipe.ORDER);
        List<Turnaround.Cover> covers = new ArrayList<>();
        List<String> why = new ArrayList<>();
        for (PestOnItem pair : PestOnItem.all(pests, List.of(kind), evidence)) {
            Optional<Evidence> best = evidence.supporting(pair).stream()
                    .filter(row -> row.recipe().mode() == TreatmentMode.WIPE)
                    .min(BEST_THEN_QUICKEST);
            best.ifPresentOrElse(
                    row -> {
                        treatments.merge(row.recipe(), AppliedTreatment.of(row), (held, more) -> held.raisedTo(row));
                        covers.add(cover(row, kind.material()));
                    },
                    () -> why.add(pair.words() + ": " + evidence.whyNothing(pair, false)));
        }
        return why.isEmpty() && !covers.isEmpty()
                ? new Care.Wiped(List.copyOf(treatments.values()), List.copyOf(covers))
                : new Care.NotCovered(List.copyOf(why));
    }

    private static Turnaround.Cover cover(Evidence row, Material material) {
        return new Turnaround.Cover(row.pest(), material, row.recipe().treatment(), row.grade(), row.source());
    }

    /** How an agent is named for people who wipe: the treatment's words with its strength and minutes. */
    public static String words(AppliedTreatment wipe) {
        return "wipe with " + wipe.recipe().agent()
                + wipe.recipe().target().map(target -> " (" + target + ")").orElse("") + ", keep it wet "
                + wipe.wholeContactMin() + " min" + (wipe.pickFirst() ? ", fragments picked off first" : "");
    }
}
