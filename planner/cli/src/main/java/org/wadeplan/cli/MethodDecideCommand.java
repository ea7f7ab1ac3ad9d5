package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.GivenValues;
import org.wadeplan.planner.method.KitForAll;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.walk.WalkOver;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which method fits each site, by which rule. */
@Command(
        name = "decide",
        mixinStandardHelpOptions = true,
        description = "ask the round's decision table about each site: the rule and method, what is missing, or why"
                + " nothing fits")
final class MethodDecideCommand extends RoundCommand {

    MethodDecideCommand(Console console) {
        super(console);
    }

    @Option(names = "--site", paramLabel = "S", description = "one site only (default: every site)")
    private Optional<String> site = Optional.empty();

    @Option(
            names = "--measured",
            paramLabel = "INPUT=VALUE",
            description = "a reading taken on arrival at that site, such as max_depth_m=0.9; may be repeated")
    private List<String> measured = List.of();

    @Override
    int run(Round round) {
        if (site.isPresent() && round.site(site.get()).isEmpty()) {
            return unknown(
                    "--site", site.get(), round.sites().stream().map(Site::id).toList());
        }
        if (!measured.isEmpty()) {
            return walkedOver(round);
        }
        List<MethodDecision> decisions = MethodChooser.decide(round).stream()
                .filter(decision -> site.isEmpty() || decision.site().equals(site.get()))
                .toList();
        TextTable table = new TextTable("site", "rule", "method", "why");
        for (MethodDecision decision : decisions) {
            table.row(
                    decision.site(),
                    MethodWords.rule(decision),
                    MethodWords.method(decision),
                    MethodWords.why(decision));
        }
        List<String> text = new ArrayList<>();
        text.add("Method table " + round.methodTable().file() + " (version by SHA-256: "
                + round.methodTable().hash().substring(0, 12) + ") on the planned conditions in sites.csv");
        text.addAll(TextTable.hanging(
                "Methods: ", MethodLegend.of(round, decisions.stream().map(MethodWords::method))));
        text.addAll(table.lines());
        decisions.forEach(decision -> text.addAll(kit(round, decision)));
        text.add("Measure again at the water: a reading on the other side of a limit gives another method.");
        return show(round, MethodFindings.of(round, decisions), decisions, text);
    }

    /** What to carry to a site whose method is settled at the water. */
    private static List<String> kit(Round round, MethodDecision decision) {
        if (!(decision.outcome() instanceof MethodOutcome.Undecided undecided)) {
            return List.of();
        }
        String lines = KitForAll.of(round, undecided.possibleMethods()).stream()
                .map(line -> Quantity.words(line.quantity(), "") + " " + line.kind() + " a "
                        + line.per().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .collect(Collectors.joining(", "));
        return lines.isEmpty()
                ? List.of()
                : TextTable.hanging(decision.site() + ", kit that covers every possible method: ", lines);
    }

    private int walkedOver(Round round) {
        Optional<SiteCase> known = SiteCase.of(round).stream()
                .filter(one -> site.equals(Optional.of(one.site())))
                .findFirst();
        if (known.isEmpty()) {
            return unknown(
                    "--measured without --site",
                    "",
                    round.sites().stream().map(Site::id).toList());
        }
        Checked<Map<String, CaseValue>> readings = GivenValues.of(round.methodTable(), measured);
        if (readings.value().isEmpty()) {
            console().problems(readings.problems());
            return ExitCode.USAGE;
        }
        WalkOver walk =
                WalkOver.of(round.methodTable(), known.get(), readings.value().get());
        return show(
                round,
                MethodFindings.of(round, List.of(walk.measured())),
                walk,
                WalkOverText.lines(round, known.get().measured(readings.value().get()), walk));
    }
}
