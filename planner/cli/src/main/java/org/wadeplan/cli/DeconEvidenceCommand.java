package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.decon.EvidenceReport;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The rows of evidence as they count for a round, and what its items bear. */
@Command(
        name = "evidence",
        mixinStandardHelpOptions = true,
        description = "which treatment is supported against which pest, by whom, and what must not be used on what")
final class DeconEvidenceCommand extends RoundCommand {

    @Option(names = "--pest", paramLabel = "P", description = "only this pest")
    private Optional<String> pest = Optional.empty();

    @Option(names = "--kit-set", paramLabel = "K", description = "only what this kit set is made of")
    private Optional<String> kitSet = Optional.empty();

    DeconEvidenceCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        List<String> pests = round.biosecurity().pests().stream().map(Pest::id).toList();
        List<String> kitSets = round.store().kitSets().stream().map(KitSet::id).toList();
        if (pest.isPresent() && !pests.contains(pest.get())) {
            return unknown("--pest", pest.get(), pests);
        }
        if (kitSet.isPresent() && !kitSets.contains(kitSet.get())) {
            return unknown("--kit-set", kitSet.get(), kitSets);
        }
        List<KitSet> asked = round.store().kitSets().stream()
                .filter(set -> kitSet.map(set.id()::equals).orElse(true))
                .toList();
        EvidenceReport report = EvidenceReport.of(round, pest.map(List::of).orElse(pests), asked);
        return show(round, List.of(), report, text(report));
    }

    private static List<String> text(EvidenceReport report) {
        RemarkList remarks = new RemarkList();
        TextTable table = new TextTable(
                "pest", "items", "treatment", "agent and target", "min", "dry_h", "grade", "counts", "source");
        for (EvidenceReport.Line line : report.lines()) {
            table.row(
                    line.pest() + line.stage().map(stage -> " " + stage).orElse(""),
                    lower(line.material()),
                    line.treatment() + " (" + lower(line.mode()) + ")",
                    line.agent() + line.target().map(target -> ", " + target).orElse(""),
                    number(line.contactMin()),
                    number(line.dryingH()),
                    line.grade().name(),
                    counts(line, remarks),
                    remarks.numberOf(line.source()));
        }
        List<String> text = new ArrayList<>(table.lines());
        text.add(
                "Grades: A tested, complete; B tested, partly or on a surrogate; C an agency's instruction; X tested and"
                        + " not effective.");
        text.add("A row counts for exactly its strength, temperature and mode. Nothing here clears gear.");
        text.add("");
        text.addAll(items(report));
        text.add("");
        text.add("Rules in force"
                + report.jurisdiction().map(place -> " in " + place).orElse("") + ":");
        if (report.rules().isEmpty()) {
            text.add("none" + (report.jurisdiction().isEmpty() ? ": round.json names no jurisdiction" : ""));
        }
        report.rules()
                .forEach(rule -> text.addAll(
                        TextTable.hanging("- ", rule.rule() + ": " + rule.text() + " Source: " + rule.source() + ".")));
        text.add("");
        text.add("Sources and reasons:");
        text.addAll(remarks.lines());
        return text;
    }

    private static String counts(EvidenceReport.Line line, RemarkList remarks) {
        if (line.outOfForce().isPresent()) {
            return "no " + remarks.numberOf(line.outOfForce().get());
        }
        if (line.blocks()) {
            return "BLOCKS";
        }
        return line.refusedOn().isEmpty() ? "yes" : "not on " + remarks.numberOf(String.join("; ", line.refusedOn()));
    }

    private static List<String> items(EvidenceReport report) {
        TextTable table = new TextTable("kit set", "items", "material", "gear class", "what they bear");
        for (EvidenceReport.ItemLine item : report.items()) {
            table.row(
                    item.kitSet(),
                    item.kinds().isEmpty() ? "anything of it" : String.join(", ", item.kinds()),
                    lower(item.material()),
                    item.gearClass().orElse("-"),
                    item.limits());
        }
        return table.lines();
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.2f", value);
    }
}
