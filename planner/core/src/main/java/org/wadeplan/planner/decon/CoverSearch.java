package org.wadeplan.planner.decon;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.wadeplan.planner.decon.CoverModel.Limits;
import org.wadeplan.planner.decon.CoverModel.Way;

/**
 * Finds the cheapest set of applied treatments that covers every pair, and always proves it.
 *
 * <p>For each limit on drying and picking it branches on the pair with the fewest ways left: each way in turn, with those
 * tried before it forbidden, so that no set is looked at twice. A branch is left where what it costs already, with the least
 * that pairs without a recipe in common still need, is more than the best. Those needs add up, so the bound never
 * overstates, and the search has no cut-off.
 */
final class CoverSearch {

    /** Sums of minutes stay below 2^20 and numbers of treatments below 2^8, so one number orders all three. */
    private static final int CREW_SHIFT = 8;

    private static final int RELEASE_SHIFT = 28;

    private final CoverModel model;
    private final StepSequence sequence;
    private final CleanPrice price;
    private final int recipes;
    private final double[] level;
    private final double[] cap;
    private final boolean[] taken;
    private double[][] pairs = new double[0][];
    private int[][] ways = new int[0][];
    private long[] least = new long[0];
    private Limits limits = new Limits(0, 0, false);
    private long bestKey = Long.MAX_VALUE;
    private @Nullable Found best;

    /** A whole set with what it costs. */
    record Found(List<AppliedTreatment> treatments, List<DeconStep> steps, CleanCost cost) {}

    /** @param options for each pair the rows that support something against it; none of them empty */
    CoverSearch(List<List<Evidence>> options, StepSequence sequence, ChemicalCautions cautions, CleanPrice price) {
        this.model = new CoverModel(options, sequence, cautions);
        this.sequence = sequence;
        this.price = price;
        this.recipes = model.recipes().size();
        this.level = new double[recipes];
        this.cap = new double[recipes];
        this.taken = new boolean[recipes];
    }

    /** The cheapest set, the first in order of recipes among equals; empty where only clashing agents would do. */
    Optional<Found> cheapest() {
        for (Limits each : model.limits()) {
            limits = each;
            long base = key(each.aloneMin() + model.crewMin(each), model.crewMin(each), 0);
            pairs = model.contacts(each);
            if (base <= bestKey && (pairs.length > 0 || model.options().isEmpty())) {
                Arrays.fill(level, -1);
                Arrays.fill(cap, CoverModel.NONE);
                least = new long[pairs.length];
                ways = new int[pairs.length + 1][];
                ways[pairs.length] = new int[0];
                for (int pair = 0; pair < pairs.length; pair++) {
                    double[] contacts = pairs[pair];
                    ways[pair] = IntStream.range(0, recipes)
                            .filter(recipe -> contacts[recipe] != CoverModel.NONE)
                            .toArray();
                }
                extend(IntStream.range(0, pairs.length).toArray(), base, 0);
            }
        }
        return Optional.ofNullable(best);
    }

    private static long key(int releasedMin, int crewMin, int treatments) {
        return ((long) releasedMin << RELEASE_SHIFT) + ((long) crewMin << CREW_SHIFT) + treatments;
    }

    /**
     * @param open numbers of the pairs that the set at hand does not cover
     * @param spent what the set costs without hanging, which is done once for all of them
     */
    private void extend(int[] open, long spent, int hangMin) {
        long held = spent + key(hangMin, hangMin, 0);
        if (open.length == 0) {
            keep(held);
            return;
        }
        int next = hardest(open);
        if (ways[next].length == 0 || held + stillNeeded(open) > bestKey) {
            return;
        }
        int[] tried = cheapestFirst(next);
        double[] capsBefore = cap.clone();
        double[] caps = cap.clone();
        for (int recipe : tried) {
            double contact = pairs[next][recipe];
            double levelBefore = level[recipe];
            level[recipe] = contact;
            if (levelBefore < 0) {
                forbidClashes(recipe);
            }
            extend(
                    stillOpen(open, recipe),
                    spent + raise(recipe, levelBefore, contact),
                    Math.max(hangMin, model.hangMin(recipe)));
            level[recipe] = levelBefore;
            caps[recipe] = contact;
            System.arraycopy(caps, 0, cap, 0, recipes);
        }
        System.arraycopy(capsBefore, 0, cap, 0, recipes);
    }

    private int[] stillOpen(int[] open, int recipe) {
        int[] left = new int[open.length];
        int count = 0;
        for (int pair : open) {
            if (pairs[pair][recipe] > level[recipe]) {
                left[count++] = pair;
            }
        }
        return Arrays.copyOf(left, count);
    }

    private void forbidClashes(int recipe) {
        for (int other = 0; other < recipes; other++) {
            if (model.clash(recipe, other)) {
                cap[other] = 0;
            }
        }
    }

    /** A recipe may be raised to less than its cap. */
    private boolean open(int recipe, double contact) {
        return contact < cap[recipe];
    }

    private long raise(int recipe, double from, double contact) {
        int more = (int) Math.ceil(contact) - (from < 0 ? 0 : (int) Math.ceil(from));
        int around = from < 0 ? model.aroundMin(recipe) : 0;
        int crew = model.alone(recipe) ? 0 : more + around;
        return key(model.alone(recipe) ? more : crew, crew, from < 0 ? 1 : 0);
    }

    /** The pair with the fewest ways, of such the dearest; the number after the last one where a pair has no way left. */
    private int hardest(int[] open) {
        int hardest = open[0];
        int fewest = Integer.MAX_VALUE;
        for (int pair : open) {
            int count = 0;
            long cheapest = Long.MAX_VALUE;
            for (int recipe : ways[pair]) {
                if (open(recipe, pairs[pair][recipe])) {
                    count++;
                    cheapest = Math.min(cheapest, raise(recipe, level[recipe], pairs[pair][recipe]));
                }
            }
            least[pair] = cheapest;
            if (count < fewest || (count == fewest && cheapest > least[hardest])) {
                fewest = count;
                hardest = pair;
            }
        }
        return fewest == 0 ? pairs.length : hardest;
    }

    private int[] cheapestFirst(int pair) {
        return Arrays.stream(ways[pair])
                .filter(recipe -> open(recipe, pairs[pair][recipe]))
                .boxed()
                .sorted(Comparator.comparingLong(recipe -> raise(recipe, level[recipe], pairs[pair][recipe])))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /**
     * The least that uncovered pairs without a recipe in common still cost, the dearest taken first; hanging is left out of
     * it.
     */
    private long stillNeeded(int[] open) {
        int dearest = open[0];
        for (int pair : open) {
            dearest = least[pair] > least[dearest] ? pair : dearest;
        }
        Arrays.fill(taken, false);
        long sum = takeIfApart(dearest);
        for (int pair : open) {
            sum += takeIfApart(pair);
        }
        return sum;
    }

    private long takeIfApart(int pair) {
        for (int recipe : ways[pair]) {
            if (taken[recipe] && open(recipe, pairs[pair][recipe])) {
                return 0;
            }
        }
        for (int recipe : ways[pair]) {
            taken[recipe] |= open(recipe, pairs[pair][recipe]);
        }
        return least[pair];
    }

    private void keep(long key) {
        if (key > bestKey) {
            return;
        }
        List<AppliedTreatment> treatments = applied();
        List<DeconStep> steps = sequence.around(treatments);
        Found found = new Found(treatments, steps, price.of(steps, treatments));
        bestKey = key;
        Found held = best;
        if (held == null
                || found.cost().compareTo(held.cost()) < 0
                || (found.cost().equals(held.cost()) && names(found).compareTo(names(held)) < 0)) {
            best = found;
        }
    }

    /** Each pair takes the best graded row that the set does; what no pair takes is left out. */
    private List<AppliedTreatment> applied() {
        SortedMap<Recipe, AppliedTreatment> set = new TreeMap<>(Recipe.ORDER);
        for (List<Way> ways : model.options()) {
            Evidence row =
                    ways.stream().filter(this::done).findFirst().orElseThrow().row();
            set.merge(row.recipe(), AppliedTreatment.of(row), (held, fresh) -> held.raisedTo(row));
        }
        return List.copyOf(set.values());
    }

    private boolean done(Way way) {
        double held = level[way.recipe()];
        return held >= 0 && held >= way.contactMin() && way.within(limits);
    }

    private static String names(Found found) {
        return found.treatments().stream()
                .map(treatment -> treatment.recipe().words())
                .reduce("", (left, right) -> left + "\n" + right);
    }
}
