package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/**
 * The rows of a treatments table that count on the round's first day where the round is, asked one pest on one kind of item
 * at a time. Nothing is credited that no row supports, and nothing that would harm the item.
 *
 * <p>A row of grade X blocks its treatment, in its mode, for its pest, stage and material, whatever other rows say. Where
 * several rows support the same recipe for the same pair, the one with the longest contact counts.
 */
final class EvidenceTable {

    private static final Comparator<Evidence> LONGEST_LAST = Comparator.comparingDouble(Evidence::contactMin)
            .thenComparingDouble(Evidence::dryingH)
            .thenComparing(Evidence::pickFirst)
            .thenComparing(Evidence::grade)
            .thenComparing(Evidence::source);

    /** A row with what it takes to apply it and why it does not count, where it does not. */
    record Row(Treatment treatment, Recipe recipe, Optional<String> outOfForce) {

        boolean counts() {
            return outOfForce.isEmpty();
        }

        boolean refuses() {
            return treatment.grade() == EvidenceGrade.X;
        }
    }

    private record Key(String pest, Material material) {}

    private record StageKey(String pest, Optional<String> stage, Material material) {}

    /** Evidence as the table gives it, before anybody asks what the item bears; worked out once for each. */
    private final Map<StageKey, List<Evidence>> found = new ConcurrentHashMap<>();

    private final List<Row> rows;
    private final Map<Key, List<Row>> byKey = new HashMap<>();
    private final Map<String, SortedSet<String>> stages = new HashMap<>();
    private final List<Recipe> recipes;

    EvidenceTable(Biosecurity biosecurity, LocalDate day) {
        RulesOfPlace rules = new RulesOfPlace(biosecurity, day);
        this.rows = biosecurity.treatments().stream()
                .map(row -> new Row(row, Recipe.of(row), rules.outOfForce(row)))
                .toList();
        biosecurity.pests().stream()
                .filter(pest -> !pest.stages().isEmpty())
                .forEach(pest -> stages.put(pest.id(), new TreeSet<>(pest.stages())));
        for (Row row : rows) {
            Treatment of = row.treatment();
            byKey.computeIfAbsent(new Key(of.pest(), of.material()), key -> new ArrayList<>())
                    .add(row);
            of.stage().ifPresent(stage -> stages.computeIfAbsent(of.pest(), pest -> new TreeSet<>())
                    .add(stage));
        }
        this.recipes = rows.stream()
                .filter(Row::counts)
                .map(Row::recipe)
                .distinct()
                .sorted(Recipe.ORDER)
                .toList();
    }

    /** Every row, in the table's order, those that do not count too. */
    List<Row> rows() {
        return rows;
    }

    /** Every recipe of the table that is in force, in {@link Recipe#ORDER}. */
    List<Recipe> recipes() {
        return recipes;
    }

    /** The life stages that the round's list of pests or the table tells apart for a pest, all of which must be covered; else the pest as a whole. */
    List<Optional<String>> stages(String pest) {
        SortedSet<String> named = stages.getOrDefault(pest, new TreeSet<>());
        return named.isEmpty()
                ? List.of(Optional.empty())
                : named.stream().map(Optional::of).toList();
    }

    /** All that supports anything against the pair, in order of recipe. */
    List<Evidence> supporting(PestOnItem pair) {
        List<Evidence> all = unbarred(pair);
        return pair.on().gear().isEmpty()
                ? all
                : all.stream()
                        .filter(row -> barred(row.recipe(), pair).isEmpty())
                        .toList();
    }

    private List<Evidence> unbarred(PestOnItem pair) {
        return found.computeIfAbsent(new StageKey(pair.pest(), pair.stage(), pair.material()), key -> recipesFor(pair)
                .flatMap(recipe -> evidence(recipe, pair).stream())
                .toList());
    }

    /** The best graded of some rows. */
    static List<Evidence> bestGraded(List<Evidence> all) {
        Optional<EvidenceGrade> best = all.stream().map(Evidence::grade).min(Comparator.naturalOrder());
        return all.stream()
                .filter(row -> best.filter(row.grade()::equals).isPresent())
                .toList();
    }

    /** What supports a recipe against the pair on an item that bears it. */
    Optional<Evidence> support(Recipe recipe, PestOnItem pair) {
        return barred(recipe, pair).isPresent() ? Optional.empty() : evidence(recipe, pair);
    }

    private Stream<Recipe> recipesFor(PestOnItem pair) {
        Stream<Row> about = rowsFor(pair).stream();
        if (pair.material() == Material.FELT) {
            about = Stream.concat(about, rowsFor(pair.as(Material.ABSORBENT)).stream());
        }
        return about.filter(Row::counts).map(Row::recipe).distinct().sorted(Recipe.ORDER);
    }

    private Optional<Evidence> evidence(Recipe recipe, PestOnItem pair) {
        if (blockedBy(recipe, pair).isPresent()) {
            return Optional.empty();
        }
        Optional<Evidence> own = row(recipe, pair);
        if (own.isPresent() || pair.material() != Material.FELT) {
            return own;
        }
        return evidence(recipe, pair.as(Material.ABSORBENT))
                .map(absorbent -> FeltRule.fromAbsorbent(absorbent, row(recipe, pair.as(Material.HARD))));
    }

    /** Why evidence for a recipe is not credited on these items, where there is some: they would be harmed by it. */
    Optional<String> barred(Recipe recipe, PestOnItem pair) {
        return pair.on().gear().flatMap(gear -> GearLimits.bars(gear, recipe));
    }

    /** Each recipe with evidence against the pair that these items do not bear, with the reason. */
    List<String> barredWords(PestOnItem pair) {
        return unbarred(pair).stream()
                .map(Evidence::recipe)
                .flatMap(recipe -> barred(recipe, pair).stream()
                        .map(why ->
                                recipe.words() + " is refused on " + pair.on().words() + ": " + why))
                .toList();
    }

    /** The rows of grade X about a pair, in table order. */
    List<Treatment> refusals(PestOnItem pair) {
        return rowsFor(pair).stream()
                .filter(row -> row.refuses() && row.counts() && pair.isOf(row.treatment()))
                .map(Row::treatment)
                .toList();
    }

    /**
     * Why each treatment that the table knows for the pest does not count for the pair, in one sentence.
     *
     * @param soakAsked true where a spray does not do
     */
    String whyNothing(PestOnItem pair, boolean soakAsked) {
        List<String> reasons = rows.stream()
                .filter(row -> row.treatment().pest().equals(pair.pest()))
                .map(Row::recipe)
                .distinct()
                .sorted(Recipe.ORDER)
                .map(recipe -> recipe.words() + ": " + whyNot(recipe, pair, soakAsked))
                .toList();
        String stage = pair.stageWords().isBlank() ? "" : pair.stage().orElse("") + ": ";
        String kinds = pair.on().kinds().isEmpty() ? "" : pair.on().words() + ": ";
        return stage
                + kinds
                + (reasons.isEmpty() ? "no treatment in the table names " + pair.pest() : String.join("; ", reasons));
    }

    private String whyNot(Recipe recipe, PestOnItem pair, boolean soakAsked) {
        Optional<Treatment> refusal = blockedBy(recipe, pair);
        if (refusal.isPresent()) {
            return "tested and not effective (" + refusal.get().source() + ")";
        }
        if (evidence(recipe, pair).isPresent()) {
            return barred(recipe, pair)
                    .orElse(soakAsked ? "a spray, and a known pest or protected water asks for a soak" : "not taken");
        }
        return rowsFor(pair).stream()
                .filter(row -> row.recipe().equals(recipe) && pair.isOf(row.treatment()))
                .flatMap(row -> row.outOfForce().stream())
                .findFirst()
                .orElseGet(() -> noRow(recipe, pair));
    }

    private String noRow(Recipe recipe, PestOnItem pair) {
        boolean otherStage = rowsFor(pair).stream().anyMatch(row -> row.recipe().equals(recipe));
        return otherStage
                ? "no row for the stage " + pair.stage().orElse("")
                : "no row for " + Words.lower(pair.material()) + " items";
    }

    private Optional<Treatment> blockedBy(Recipe recipe, PestOnItem pair) {
        return refusals(pair).stream()
                .filter(row -> row.id().equals(recipe.treatment()) && row.mode() == recipe.mode())
                .findFirst();
    }

    private Optional<Evidence> row(Recipe recipe, PestOnItem pair) {
        return rowsFor(pair).stream()
                .filter(row -> !row.refuses()
                        && row.counts()
                        && pair.isOf(row.treatment())
                        && row.recipe().equals(recipe))
                .map(row -> Evidence.of(row.treatment()))
                .max(LONGEST_LAST);
    }

    private List<Row> rowsFor(PestOnItem pair) {
        return byKey.getOrDefault(new Key(pair.pest(), pair.material()), List.of());
    }
}
