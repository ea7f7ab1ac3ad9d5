package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What is short in the week in force and the ways out of it; what each crew loads each day. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description =
                "what is short in the week and which ways out were tried; load lists by crew and day, serial by serial."
                        + " Follows the agreed week where the round has one; shortages end with exit code 1")
final class KitListCommand extends RoundCommand {

    @Mixin
    private SearchOptions search = new SearchOptions();

    KitListCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.inForce(round, search.planOptions(), new ProgressLine(console()));
        KitReport report = KitReport.of(round, plan);
        List<String> text = new ArrayList<>();
        text.add(round.header().title() + " · the week as " + report.week() + " · times in "
                + round.header().zone());
        text.add("");
        text.addAll(KitShortText.of(report));
        text.addAll(KitLoadText.of(report, round.header().zone()));
        int code = show(round, List.of(), report, text);
        return report.anythingShort() ? ExitCode.FINDINGS : code;
    }
}
