package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** What the round's table of treatments supports, asked about a treatment as it was really done. */
public final class CreditedEvidence {

    private final Biosecurity biosecurity;
    private final EvidenceTable table;
    private final DryingRules drying;

    /** @param day the day on which rows and rules must be in force */
    public CreditedEvidence(Biosecurity biosecurity, LocalDate day) {
        this.biosecurity = biosecurity;
        this.table = new EvidenceTable(biosecurity, day);
        Set<String> everyWater = new TreeSet<>();
        biosecurity.rules().forEach(rule -> everyWater.addAll(rule.waters()));
        this.drying = new RulesOfPlace(biosecurity, day).drying(everyWater);
    }

    /**
     * What a row asks for and supports.
     *
     * @param contactMin minutes of contact, all surfaces wet
     * @param dryingH hours of drying after that, from dry to the touch
     */
    public record Support(
            Recipe recipe,
            String pest,
            Material material,
            EvidenceGrade grade,
            double contactMin,
            double dryingH,
            boolean pickFirst,
            String source) {}

    /** True where any row names the treatment, in whatever mode. */
    public boolean knows(String treatment) {
        return biosecurity.treatments().stream().anyMatch(row -> row.id().equals(treatment));
    }

    /** The ways in which the table knows the treatment in this mode, those that only rows of grade X name left out. */
    public List<Recipe> recipes(String treatment, TreatmentMode mode) {
        return biosecurity.treatments().stream()
                .filter(row -> row.id().equals(treatment) && row.mode() == mode && row.grade() != EvidenceGrade.X)
                .map(Recipe::of)
                .distinct()
                .sorted(Recipe.ORDER)
                .toList();
    }

    /**
     * Empty where no row in force supports it in every life stage that the table tells apart, or a row of grade X blocks it.
     * The drying is as long as the row and the rules of the place ask, wherever they hold.
     */
    public Optional<Support> support(Recipe recipe, String pest, Material material) {
        List<Optional<Evidence>> stages = table.stages(pest).stream()
                .map(stage -> new PestOnItem(pest, stage, ItemKind.anythingOf(material)))
                .map(pair -> table.support(recipe, pair).map(drying::applied))
                .toList();
        return stages.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : stages.stream()
                        .map(Optional::orElseThrow)
                        .reduce(CreditedEvidence::both)
                        .map(CreditedEvidence::support);
    }

    /** Why a treatment would harm items of that kind; empty where nothing on record stands against it. */
    public Optional<String> harms(Recipe recipe, ItemKind kind) {
        return kind.gear().flatMap(gear -> GearLimits.bars(gear, recipe));
    }

    /** What does for two life stages at once, with the poorer grade. */
    private static Evidence both(Evidence one, Evidence other) {
        boolean same = one.source().equals(other.source());
        return new Evidence(
                one.recipe(),
                one.pest(),
                one.material(),
                one.grade().compareTo(other.grade()) > 0 ? one.grade() : other.grade(),
                Math.max(one.contactMin(), other.contactMin()),
                Math.max(one.dryingH(), other.dryingH()),
                one.pickFirst() || other.pickFirst(),
                same ? one.source() : one.source() + "; " + other.source());
    }

    private static Support support(Evidence row) {
        return new Support(
                row.recipe(),
                row.pest(),
                row.material(),
                row.grade(),
                row.contactMin(),
                row.dryingH(),
                row.pickFirst(),
                row.source());
    }

    /** Rows that tested what was done, by agent and mode under whatever name, and found it not effective. */
    public List<Treatment> foundNotEffective(String treatment, TreatmentMode mode) {
        List<String> agents = biosecurity.treatments().stream()
                .filter(row -> row.id().equals(treatment))
                .map(Treatment::agent)
                .distinct()
                .toList();
        return biosecurity.treatments().stream()
                .filter(row -> row.grade() == EvidenceGrade.X
                        && row.mode() == mode
                        && (row.id().equals(treatment) || agents.contains(row.agent())))
                .toList();
    }
}
