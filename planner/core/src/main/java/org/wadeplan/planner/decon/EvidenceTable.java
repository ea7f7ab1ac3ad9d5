package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/**
 * The rows of a treatments table, asked one pair of pest and material at a time. Nothing is credited that no row supports.
 *
 * <p>A row of grade X blocks its treatment, in its mode, for its pest and material, whatever other rows say. Where several
 * rows support the same recipe for the same pair, the one with the longest contact counts.
 */
final class EvidenceTable {

    private static final Comparator<Evidence> LONGEST_LAST = Comparator.comparingDouble(Evidence::contactMin)
            .thenComparingDouble(Evidence::dryingH)
            .thenComparing(Evidence::pickFirst)
            .thenComparing(Evidence::grade)
            .thenComparing(Evidence::source);

    private final List<Treatment> rows;
    private final List<Recipe> recipes;

    EvidenceTable(List<Treatment> rows) {
        this.rows = List.copyOf(rows);
        this.recipes =
                rows.stream().map(Recipe::of).distinct().sorted(Recipe.ORDER).toList();
    }

    /** Every recipe of the table, in {@link Recipe#ORDER}. */
    List<Recipe> recipes() {
        return recipes;
    }

    /** All that supports anything against the pair, in order of recipe. */
    List<Evidence> supporting(PestOnMaterial pair) {
        return recipes.stream()
                .flatMap(recipe -> support(recipe, pair).stream())
                .toList();
    }

    /** The best graded of what supports anything against the pair, in order of recipe. */
    List<Evidence> bestGraded(PestOnMaterial pair) {
        List<Evidence> all = supporting(pair);
        Optional<EvidenceGrade> best = all.stream().map(Evidence::grade).min(Comparator.naturalOrder());
        return all.stream()
                .filter(row -> best.filter(row.grade()::equals).isPresent())
                .toList();
    }

    Optional<Evidence> support(Recipe recipe, PestOnMaterial pair) {
        if (blockedBy(recipe, pair).isPresent()) {
            return Optional.empty();
        }
        Optional<Evidence> own = row(recipe, pair);
        if (own.isPresent() || pair.material() != Material.FELT) {
            return own;
        }
        return support(recipe, pair.on(Material.ABSORBENT))
                .map(absorbent -> FeltRule.fromAbsorbent(absorbent, row(recipe, pair.on(Material.HARD))));
    }

    /** The rows of grade X about a pair, in table order. */
    List<Treatment> refusals(PestOnMaterial pair) {
        return rows.stream()
                .filter(row -> row.grade() == EvidenceGrade.X && pair.isOf(row))
                .toList();
    }

    /** Why each treatment that the table knows for the pest does not count for the pair, in one sentence. */
    String whyNothing(PestOnMaterial pair) {
        List<String> reasons = new ArrayList<>();
        for (Recipe recipe : recipes) {
            boolean about = rows.stream()
                    .anyMatch(row ->
                            row.pest().equals(pair.pest()) && Recipe.of(row).equals(recipe));
            if (about) {
                reasons.add(recipe.words() + ": " + whyNot(recipe, pair));
            }
        }
        return reasons.isEmpty() ? "no treatment in the table names " + pair.pest() : String.join("; ", reasons);
    }

    private String whyNot(Recipe recipe, PestOnMaterial pair) {
        return blockedBy(recipe, pair)
                .map(row -> "tested and not effective (" + row.source() + ")")
                .orElseGet(() -> "no row for " + Words.lower(pair.material()) + " items");
    }

    private Optional<Treatment> blockedBy(Recipe recipe, PestOnMaterial pair) {
        return refusals(pair).stream()
                .filter(row -> row.id().equals(recipe.treatment()) && row.mode() == recipe.mode())
                .findFirst();
    }

    private Optional<Evidence> row(Recipe recipe, PestOnMaterial pair) {
        return rows.stream()
                .filter(row -> row.grade() != EvidenceGrade.X
                        && pair.isOf(row)
                        && Recipe.of(row).equals(recipe))
                .map(Evidence::of)
                .max(LONGEST_LAST);
    }
}
