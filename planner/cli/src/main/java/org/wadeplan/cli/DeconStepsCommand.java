package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.cli.BenchText.LooseWith;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.Words;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The week's cleaning by the clock, and what each kit set needs between any two waters. */
@Command(
        name = "steps",
        mixinStandardHelpOptions = true,
        description =
                "the week's cleaning by day and clock: who, where, which bath, how much, released when; with --table"
                        + " the steps of each kit set between any two waters, with the evidence")
final class DeconStepsCommand extends RoundCommand {

    @Option(names = "--kit-set", paramLabel = "K", description = "only this kit set")
    private Optional<String> kitSet = Optional.empty();

    @Option(names = "--table", description = "what each kit set needs for every ordered pair of waters, without a week")
    private boolean table;

    @Mixin
    private SearchOptions search = new SearchOptions();

    DeconStepsCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        List<String> kitSets = round.store().kitSets().stream().map(KitSet::id).toList();
        if (kitSet.isPresent() && !kitSets.contains(kitSet.get())) {
            return unknown("--kit-set", kitSet.get(), kitSets);
        }
        if (table) {
            List<Turnaround> rows = TurnaroundPlanner.table(round).rows().stream()
                    .filter(row -> kitSet.map(row.kitSet()::equals).orElse(true))
                    .toList();
            return show(round, findings(rows), rows, text(round, rows));
        }
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan inForce = RoundPlanner.inForce(round, search.planOptions(), new ProgressLine(console()));
        BathPlan plan = BathPlan.of(round, inForce.week());
        BathPlan shown = kitSet.map(plan::only).orElse(plan);
        List<LooseWith> loose = loose(round, inForce);
        return show(round, shortages(shown), new Cleaning(shown, loose), new BenchText(round, shown, loose).lines());
    }

    /** What the command gives as JSON. */
    private record Cleaning(BathPlan bench, List<LooseWith> looseGear) {}

    private List<LooseWith> loose(Round round, RoundPlan inForce) {
        ExposureLedger ledger = ExposureLedger.of(round, inForce.week(), inForce.kit());
        return inForce.week().decon().stream()
                .filter(task -> kitSet.map(task.kitSet()::equals).orElse(true))
                .map(task -> new LooseWith(task.kitSet(), task.start(), ledger.looseWith(task)))
                .toList();
    }

    private static List<Problem> shortages(BathPlan plan) {
        return plan.stock().stream()
                .filter(one -> one.shortBy() > 0)
                .map(one -> Problem.warning(
                        "bath-stock-short",
                        SourcePlace.part("store.csv", one.kind()),
                        "the week's baths take " + Words.number(one.needed()) + " " + one.unit() + " and "
                                + Words.number(one.inDate()) + " are in date",
                        "enough for every bath, in date on its day",
                        "get " + Words.number(one.shortBy()) + " " + one.unit()
                                + " more, or heat instead where the table allows it"))
                .toList();
    }

    private static List<String> text(Round round, List<Turnaround> rows) {
        RemarkList reasons = new RemarkList();
        TextTable table = new TextTable("kit set", "from", "to", "crew_min", "alone_min", "why", "steps");
        for (Turnaround row : rows) {
            table.row(
                    row.kitSet(),
                    row.fromWater(),
                    row.toWater(),
                    Integer.toString(row.crewMin()),
                    Integer.toString(row.unattendedMin()),
                    reasons.numberOf(row.reason()),
                    (row.possible() ? "" : "REFUSED, see why: ")
                            + row.steps().stream().map(DeconStepsCommand::words).collect(Collectors.joining(" > ")));
        }
        List<String> text = new ArrayList<>(table.lines());
        text.add("crew_min: the crew is busy. alone_min: drying without anybody; the kit set is released after it.");
        text.addAll(TextTable.hanging(
                "Pests: ",
                round.biosecurity().pests().stream()
                        .map(pest -> pest.id() + " " + pest.name())
                        .collect(Collectors.joining("; "))));
        text.addAll(TextTable.hanging(
                "Waters: ",
                round.waters().stream()
                        .map(water -> water.id() + " " + water.name())
                        .collect(Collectors.joining("; "))));
        text.add("");
        text.add("Why:");
        text.addAll(reasons.lines());
        return text;
    }

    private static String words(DeconStep step) {
        return step.step() + " " + step.minutes()
                + step.target().map(target -> " (" + target + ")").orElse("");
    }

    private static List<Problem> findings(List<Turnaround> rows) {
        List<Problem> findings = new ArrayList<>();
        for (Turnaround row : rows) {
            for (Turnaround.Uncovered gap : row.uncovered()) {
                findings.add(Problem.error(
                        "transfer-uncovered",
                        SourcePlace.part(
                                "treatments.csv", row.kitSet() + " from " + row.fromWater() + " to " + row.toWater()),
                        gap.pest() + " on " + gap.material() + " stays uncovered: " + gap.why(),
                        "a treatment of grade A, B or C for every pest on every material",
                        "use another kit set, change the order of waters, or add a row of evidence with its source"));
            }
        }
        return findings;
    }
}
