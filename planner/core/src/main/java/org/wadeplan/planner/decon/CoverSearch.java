package org.wadeplan.planner.decon;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wadeplan.planner.decon.CoverModel.Limits;

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
    private double[][] pairs = new double[0][];
    private Limits limits = new Limits(0, false);
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
    }

    /** The cheapest set, the first in order of recipes among equals; empty where only clashing agents would do. */
    Optional<Found> cheapest() {
        for (Limits each : model.limits()) {
            limits = each;
            long base = key(each.dryMin() + model.crewMin(each), model.crewMin(each), 0);
            pairs = model.contacts(each);
            if (base <= bestKey && (pairs.length > 0 || model.options().isEmpty())) {
                Arrays.fill(level, -1);
                Arrays.fill(cap, CoverModel.NONE);
                extend(base, 0);
            }
        }
        return Optional.ofNullable(best);
    }

    private static long key(int releasedMin, int crewMin, int treatments) {
        return ((long) releasedMin << RELEASE_SHIFT) + ((long) crewMin << CREW_SHIFT) + treatments;
    }

    /** @param spent what the set at hand costs without hanging, which is done once for all of them */
    private void extend(long spent, int hangMin) {
        int next = hardest();
        if (next == -1) {
            keep(spent + key(hangMin, hangMin, 0));
            return;
        }
        if (next == -2 || spent + key(hangMin, hangMin, 0) + stillNeeded() > bestKey) {
            return;
        }
        Integer[] ways = ways(next);
        double[] capsBefore = cap.clone();
        for (int recipe : ways) {
            double contact = pairs[next][recipe];
            double levelBefore = level[recipe];
            double[] caps = cap.clone();
            level[recipe] = contact;
            if (levelBefore < 0) {
                forbidClashes(recipe);
            }
            extend(spent + raise(recipe, levelBefore, contact), Math.max(hangMin, model.hangMin(recipe)));
            System.arraycopy(caps, 0, cap, 0, recipes);
            level[recipe] = levelBefore;
            cap[recipe] = contact;
        }
        System.arraycopy(capsBefore, 0, cap, 0, recipes);
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
        return contact != CoverModel.NONE && contact < cap[recipe];
    }

    private long raise(int recipe, double from, double contact) {
        int more = (int) Math.ceil(contact) - (from < 0 ? 0 : (int) Math.ceil(from));
        int around = from < 0 ? model.aroundMin(recipe) : 0;
        int crew = model.alone(recipe) ? 0 : more + around;
        return key(model.alone(recipe) ? more : crew, crew, from < 0 ? 1 : 0);
    }

    /** The uncovered pair with the fewest ways; -1 where all are covered, -2 where one has none left. */
    private int hardest() {
        int hardest = -1;
        int fewest = Integer.MAX_VALUE;
        for (int pair = 0; pair < pairs.length; pair++) {
            if (!covered(pair)) {
                int count = 0;
                for (int recipe = 0; recipe < recipes; recipe++) {
                    count += open(recipe, pairs[pair][recipe]) ? 1 : 0;
                }
                if (count == 0) {
                    return -2;
                }
                if (count < fewest) {
                    fewest = count;
                    hardest = pair;
                }
            }
        }
        return hardest;
    }

    private boolean covered(int pair) {
        for (int recipe = 0; recipe < recipes; recipe++) {
            if (level[recipe] >= 0 && level[recipe] >= pairs[pair][recipe]) {
                return true;
            }
        }
        return false;
    }

    private Integer[] ways(int pair) {
        Integer[] open = new Integer[recipes];
        int count = 0;
        for (int recipe = 0; recipe < recipes; recipe++) {
            if (open(recipe, pairs[pair][recipe])) {
                open[count++] = recipe;
            }
        }
        Integer[] ways = Arrays.copyOf(open, count);
        Arrays.sort(ways, Comparator.comparingLong(recipe -> raise(recipe, level[recipe], pairs[pair][recipe])));
        return ways;
    }

    /** The least that uncovered pairs without a recipe in common still cost; hanging is left out of it. */
    private long stillNeeded() {
        boolean[] taken = new boolean[recipes];
        long sum = 0;
        for (int pair = 0; pair < pairs.length; pair++) {
            if (covered(pair)) {
                continue;
            }
            long least = Long.MAX_VALUE;
            boolean apart = true;
            for (int recipe = 0; recipe < recipes && apart; recipe++) {
                if (open(recipe, pairs[pair][recipe])) {
                    apart = !taken[recipe];
                    least = Math.min(least, raise(recipe, level[recipe], pairs[pair][recipe]));
                }
            }
            if (apart) {
                sum += least;
                for (int recipe = 0; recipe < recipes; recipe++) {
                    taken[recipe] |= open(recipe, pairs[pair][recipe]);
                }
            }
        }
        return sum;
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
        for (List<Evidence> rows : model.options()) {
            Evidence row = rows.stream()
                    .filter(this::done)
                    .min(Comparator.comparing(Evidence::grade)
                            .thenComparing(one -> one.recipe().words()))
                    .orElseThrow();
            set.merge(row.recipe(), AppliedTreatment.of(row), (held, fresh) -> held.raisedTo(row));
        }
        return List.copyOf(set.values());
    }

    private boolean done(Evidence row) {
        double held = level[model.recipes().indexOf(row.recipe())];
        boolean longEnough = row.recipe().kind() == AgentKind.DRY || held >= row.contactMin();
        return held >= 0 && longEnough && model.within(row, limits);
    }

    private static String names(Found found) {
        return found.treatments().stream()
                .map(treatment -> treatment.recipe().words())
                .reduce("", (left, right) -> left + "\n" + right);
    }
}
