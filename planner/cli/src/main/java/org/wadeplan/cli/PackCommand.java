package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.pack.PackResult;
import org.wadeplan.planner.pack.PackWriter;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans the round and writes everything to print, to load and to share. */
@Command(
        name = "pack",
        mixinStandardHelpOptions = true,
        description = "plan the round and write its pack: a PDF for each crew and day, GPX, calendar, GeoPackage,"
                + " GeoJSON, plan.json")
final class PackCommand extends RoundCommand {

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "the folder to write to")
    private Path out = Path.of("pack");

    PackCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.plan(round, search.planOptions(), new ProgressLine(console()));
        try {
            PackResult result = PackWriter.write(round, plan, out, now());
            List<Problem> findings = new ArrayList<>(result.problems());
            findings.addAll(plan.findings());
            int code = show(round, findings, result, result.written() ? text(plan, result) : nothing());
            if (!result.written()) {
                return code;
            }
            return plan.complete() ? code : ExitCode.NO_FEASIBLE_PLAN;
        } catch (DiskException fault) {
            return notWritten(fault);
        }
    }

    private List<String> text(RoundPlan plan, PackResult result) {
        TextTable table = new TextTable("file", "pages", "what");
        result.files()
                .forEach(file -> table.row(
                        file.name(),
                        file.pages().isPresent() ? Integer.toString(file.pages().getAsInt()) : "-",
                        file.what()));
        List<String> text = new ArrayList<>(table.lines());
        if (!result.leftOver().isEmpty()) {
            text.addAll(TextTable.hanging(
                    "From an earlier pack, not of this plan; take these out: ", String.join(", ", result.leftOver())));
        }
        text.add("Plan " + plan.version().label() + ", " + result.files().size() + " files, written to " + out + ".");
        return text;
    }

    private List<String> nothing() {
        return List.of("NOTHING WAS WRITTEN to " + out + ": see the errors.");
    }
}
