package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * The table of evidence as it counts for a round, to be read by people.
 *
 * @param jurisdiction the place whose rules the round follows
 * @param lines every row asked for, by pest, stage, material, then treatment
 * @param rules the rules of places that are in force
 * @param items what the kit sets asked for hold and bear
 */
public record EvidenceReport(
        Optional<String> jurisdiction, List<Line> lines, List<RuleLine> rules, List<ItemLine> items) {

    /**
     * One row.
     *
     * @param target strength with its basis, and temperature, in words; empty where neither is asked
     * @param blocks true for a trial that found no effect
     * @param outOfForce why it does not count; empty where it does
     * @param refusedOn kinds of items that it must not be used on, each with the reason
     */
    public record Line(
            String pest,
            Optional<String> stage,
            Material material,
            String treatment,
            TreatmentMode mode,
            String agent,
            Optional<String> target,
            double contactMin,
            double dryingH,
            boolean pickFirst,
            EvidenceGrade grade,
            boolean blocks,
            Optional<String> outOfForce,
            List<String> refusedOn,
            String source) {}

    /** A rule in force. */
    public record RuleLine(String rule, String text, String source) {}

    /**
     * A kind of item in a kit set.
     *
     * @param limits what is on record of what it bears, in words
     */
    public record ItemLine(
            String kitSet,
            List<String> kinds,
            Material material,
            Optional<String> gearClass,
            OptionalDouble maxTempC,
            String limits,
            Optional<String> source) {}

    /** The rows about some pests and the kit sets' items; all of them where nothing is named. */
    public static EvidenceReport of(Round round, Collection<String> pests, Collection<KitSet> kitSets) {
        TransferRules rules = new TransferRules(round);
        EvidenceTable table =
                new EvidenceTable(round.biosecurity(), round.header().firstDay());
        RulesOfPlace inForce =
                new RulesOfPlace(round.biosecurity(), round.header().firstDay());
        List<ItemLine> items = new ArrayList<>();
        List<ItemKind> kinds = new ArrayList<>();
        for (KitSet kitSet : kitSets) {
            for (ItemKind kind : rules.itemsOf(kitSet)) {
                kinds.add(kind);
                items.add(item(kitSet, kind));
            }
        }
        List<Line> lines = table.rows().stream()
                .filter(row -> pests.contains(row.treatment().pest()))
                .filter(row -> kinds.stream()
                        .anyMatch(kind -> kind.material() == row.treatment().material()))
                .map(row -> line(row, kinds))
                .sorted(Comparator.comparing(Line::pest)
                        .thenComparing(line -> line.stage().orElse(""))
                        .thenComparing(Line::material)
                        .thenComparing(Line::treatment)
                        .thenComparing(Line::mode)
                        .thenComparing(Line::source))
                .toList();
        List<RuleLine> ruleLines = inForce.all().stream()
                .map(rule -> new RuleLine(RulesOfPlace.words(rule), rule.text(), rule.source()))
                .toList();
        return new EvidenceReport(round.biosecurity().jurisdiction(), lines, ruleLines, List.copyOf(items));
    }

    private static Line line(EvidenceTable.Row row, List<ItemKind> kinds) {
        Treatment of = row.treatment();
        TreeSet<String> refused = new TreeSet<>();
        for (ItemKind kind : kinds) {
            if (kind.material() == of.material()) {
                kind.gear()
                        .flatMap(gear -> GearLimits.bars(gear, row.recipe()))
                        .ifPresent(why -> refused.add(kind.words() + ": " + why));
            }
        }
        return new Line(
                of.pest(),
                of.stage(),
                of.material(),
                of.id(),
                of.mode(),
                of.agent(),
                row.recipe().target(),
                of.contactMin(),
                of.dryingH(),
                of.pickFirst(),
                of.grade(),
                row.refuses(),
                row.outOfForce(),
                List.copyOf(refused),
                of.source());
    }

    private static ItemLine item(KitSet kitSet, ItemKind kind) {
        return new ItemLine(
                kitSet.id(),
                kind.kinds(),
                kind.material(),
                kind.gear().map(GearClass::id),
                kind.gear().map(GearClass::maxTempC).orElse(OptionalDouble.empty()),
                kind.gear().map(EvidenceReport::limits).orElse("not on record"),
                kind.gear().map(GearClass::source));
    }

    private static String limits(GearClass gear) {
        List<String> words = new ArrayList<>();
        words.add(
                switch (gear.immersion()) {
                    case WHOLE -> "may be immersed";
                    case PART -> "only parts may be immersed";
                    case NONE -> "wipe only";
                });
        words.add(
                gear.maxTempC().isPresent()
                        ? "bears " + Words.number(gear.maxTempC().getAsDouble()) + " °C"
                        : "heat limit not known");
        if (!gear.harmedBy().isEmpty()) {
            words.add("harmed by " + Words.list(new TreeSet<>(gear.harmedBy())));
        }
        words.add(gear.freezing() ? "bears frost" : "no frost");
        return String.join(", ", words);
    }
}
