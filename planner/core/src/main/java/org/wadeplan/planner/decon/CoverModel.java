package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The pairs and rows of one choice as arrays of numbers, so that sets can be compared without building their steps.
 *
 * <p>Minutes come from the round's own steps, asked of {@link StepSequence} one treatment at a time: what people do for a
 * set of treatments is what they do for each, but for one common brushing and picking, one hanging (the longest) and one
 * drying (the longest).
 */
final class CoverModel {

    private static final Comparator<Evidence> BEST_FIRST = Comparator.comparing(Evidence::grade)
            .thenComparing(row -> row.recipe().words())
            .thenComparing(Evidence::recipe, Recipe.ORDER);

    private static final double MIN_PER_H = 60;

    /** A contact that no row asks for. */
    static final double NONE = Double.POSITIVE_INFINITY;

    private final List<List<Way>> options;
    private final List<Recipe> recipes;
    private final boolean[][] clash;
    private final int[] aroundMin;
    private final int[] hangMin;
    private final int brushMin;
    private final int pickMin;
    private final StepSequence sequence;

    CoverModel(List<List<Evidence>> options, StepSequence sequence, ChemicalCautions cautions) {
        this.recipes = options.stream()
                .flatMap(List::stream)
                .map(Evidence::recipe)
                .distinct()
                .sorted(Recipe.ORDER)
                .toList();
        Map<Recipe, Integer> index = new HashMap<>();
        recipes.forEach(recipe -> index.put(recipe, index.size()));
        this.options = options.stream()
                .distinct()
                .map(rows -> rows.stream()
                        .sorted(BEST_FIRST)
                        .map(row -> Way.of(row, index.getOrDefault(row.recipe(), -1)))
                        .toList())
                .toList();
        List<DeconStep> bare = sequence.around(List.of());
        this.brushMin = CleanCost.crewMin(bare);
        this.sequence = sequence;
        this.aroundMin = new int[recipes.size()];
        this.hangMin = new int[recipes.size()];
        this.clash = new boolean[recipes.size()][recipes.size()];
        int picking = 0;
        for (int r = 0; r < recipes.size(); r++) {
            List<DeconStep> steps = sequence.around(List.of(new AppliedTreatment(recipes.get(r), 0, 0, false)));
            List<DeconStep> picked = sequence.around(List.of(new AppliedTreatment(recipes.get(r), 0, 0, true)));
            hangMin[r] = CleanCost.crewMin(
                    steps.stream().filter(step -> step.step().equals("hang")).toList());
            aroundMin[r] = CleanCost.crewMin(steps) - brushMin - hangMin[r];
            picking = CleanCost.crewMin(picked) - CleanCost.crewMin(steps);
            for (int s = 0; s < recipes.size(); s++) {
                clash[r][s] = cautions.mustNeverMeet(
                                recipes.get(r).agent(), recipes.get(s).agent())
                        .isPresent();
            }
        }
        this.pickMin = picking;
    }

    /**
     * A row as numbers.
     *
     * @param contactMin what the recipe's contact must reach; 0 on a rack, where minutes count as drying
     */
    record Way(Evidence row, int recipe, double contactMin, int dryMin, boolean pick) {

        static Way of(Evidence row, int recipe) {
            boolean rack = row.recipe().kind() == AgentKind.DRY;
            double hours = rack ? Math.max(row.dryingH(), row.contactMin() / 60) : row.dryingH();
            return new Way(row, recipe, rack ? 0 : row.contactMin(), (int) Math.ceil(hours * 60), row.pickFirst());
        }

        boolean within(Limits limits) {
            return dryMin <= limits.dryMin() && (limits.pick() || !pick);
        }
    }

    /**
     * One limit on drying and picking for the whole clean, within which contacts are chosen.
     *
     * @param dryMin the longest drying that a row may ask for, minutes
     * @param aloneMin how long the set then stands alone, minutes
     */
    record Limits(int dryMin, int aloneMin, boolean pick) {}

    List<Recipe> recipes() {
        return recipes;
    }

    /** For each pair its ways, the best graded first; pairs that are alike stand there once. */
    List<List<Way>> options() {
        return options;
    }

    boolean clash(int recipe, int other) {
        return clash[recipe][other];
    }

    boolean alone(int recipe) {
        return recipes.get(recipe).kind().runsAlone();
    }

    int aroundMin(int recipe) {
        return aroundMin[recipe];
    }

    int hangMin(int recipe) {
        return hangMin[recipe];
    }

    int crewMin(Limits limits) {
        return brushMin + (limits.pick() ? pickMin : 0);
    }

    /** Every limit worth trying, the soonest released first. */
    List<Limits> limits() {
        TreeSet<Integer> drying = new TreeSet<>(List.of(0));
        boolean picking = false;
        for (List<Way> ways : options) {
            for (Way way : ways) {
                drying.add(way.dryMin());
                picking |= way.pick();
            }
        }
        List<Limits> all = new ArrayList<>();
        TreeMap<Integer, Integer> longestByAlone = new TreeMap<>();
        drying.forEach(dryMin -> longestByAlone.put(aloneMin(dryMin), dryMin));
        for (Map.Entry<Integer, Integer> each : longestByAlone.entrySet()) {
            all.add(new Limits(each.getValue(), each.getKey(), false));
            if (picking) {
                all.add(new Limits(each.getValue(), each.getKey(), true));
            }
        }
        all.sort(Comparator.comparingInt(limits -> limits.aloneMin() + crewMin(limits)));
        return all;
    }

    /** Half a minute less, because hours that are turned back into minutes are rounded up. */
    private int aloneMin(int dryMin) {
        double hours = Math.max(0, dryMin - 0.5) / MIN_PER_H;
        List<AppliedTreatment> dried =
                recipes.isEmpty() ? List.of() : List.of(new AppliedTreatment(recipes.get(0), 0, hours, false));
        return CleanCost.aloneMin(sequence.around(dried));
    }

    /** Contact that each pair needs of each recipe, in minutes; {@link #NONE} where it does not help. Empty: no way. */
    double[][] contacts(Limits limits) {
        List<double[]> pairs = new ArrayList<>();
        for (List<Way> ways : options) {
            double[] contact = new double[recipes.size()];
            Arrays.fill(contact, NONE);
            boolean any = false;
            for (Way way : ways) {
                if (way.within(limits)) {
                    contact[way.recipe()] = Math.min(contact[way.recipe()], way.contactMin());
                    any = true;
                }
            }
            if (!any) {
                return new double[0][];
            }
            pairs.add(contact);
        }
        return undominated(pairs);
    }

    /** Leaves out each pair that is covered by whatever covers another one. */
    private static double[][] undominated(List<double[]> pairs) {
        List<double[]> kept = new ArrayList<>();
        for (double[] pair : pairs) {
            if (kept.stream().noneMatch(harder -> follows(pair, harder))) {
                kept.removeIf(easier -> follows(easier, pair));
                kept.add(pair);
            }
        }
        return kept.toArray(new double[0][]);
    }

    /** Whether every way of covering the harder pair covers the easier one too. */
    private static boolean follows(double[] easier, double[] harder) {
        for (int r = 0; r < easier.length; r++) {
            if (easier[r] > harder[r]) {
                return false;
            }
        }
        return true;
    }
}
