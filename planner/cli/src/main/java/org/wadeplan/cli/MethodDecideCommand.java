package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;

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

    @Override
    int run(Round round) {
        List<MethodDecision> decisions = MethodChooser.decide(round);
        TextTable table = new TextTable("site", "rule", "method", "why");
        for (MethodDecision decision : decisions) {
            table.row(
                    decision.site(),
                    MethodWords.rule(decision),
                    MethodWords.method(decision),
                    MethodWords.why(decision));
        }
        List<String> text = new ArrayList<>();
        text.add("Method table " + round.methodTable().file() + " on the planned conditions in sites.csv");
        text.addAll(TextTable.hanging(
                "Methods: ", MethodLegend.of(round, decisions.stream().map(MethodWords::method))));
        text.addAll(table.lines());
        text.add("Measure again at the water: a reading on the other side of a limit gives another method.");
        return show(round, MethodFindings.of(round, decisions), decisions, text);
    }
}
