package org.wadeplan.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What each crew loads each day. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "load lists by crew and day, serial by serial; shortages end with exit code 1")
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
        KitPlan kit = RoundPlanner.plan(round, search.planOptions(), new ProgressLine(console()))
                .kit();
        List<String> text = new ArrayList<>();
        kit.loads().forEach(load -> addLoad(text, load));
        addShortages(text, kit.shortages());
        int code = show(round, List.of(), kit, text);
        return kit.shortages().isEmpty() ? code : ExitCode.FINDINGS;
    }

    private static void addLoad(List<String> text, CrewDayLoad load) {
        text.add("Crew " + load.crew() + ", " + load.date());
        TextTable table = new TextTable("container", "what", "quantity", "serials", "valid to", "for");
        for (LoadLine line : load.lines()) {
            table.row(
                    line.container(),
                    line.label(),
                    Quantity.words(line.quantity(), line.unit()),
                    String.join(" ", line.items()),
                    line.validUntil().map(LocalDate::toString).orElse("-"),
                    String.join(" ", line.forSites()));
        }
        text.addAll(table.lines());
        text.add("");
    }

    private static void addShortages(List<String> text, List<Shortage> shortages) {
        if (shortages.isEmpty()) {
            text.add("Nothing is short on any day of this plan.");
            return;
        }
        text.add("Short:");
        for (Shortage shortage : shortages) {
            text.add(shortage.date() + ", crew " + String.join(" and ", shortage.crews()) + ": "
                    + shortage.kind().replace('-', ' ') + ", need " + Quantity.words(shortage.needed(), "") + ", have "
                    + Quantity.words(shortage.available(), ""));
            text.addAll(TextTable.hanging("  why:     ", shortage.reason()));
            text.addAll(TextTable.hanging("  way out: ", shortage.remedy()));
        }
    }
}
