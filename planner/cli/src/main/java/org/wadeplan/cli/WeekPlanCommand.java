package org.wadeplan.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.plan.PlanJson;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes the week and writes plan.json. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "plan the round and write plan.json into its folder (the previous one stays as plan.json.bak)")
final class WeekPlanCommand extends RoundCommand {

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(names = "--no-write", description = "show the week without writing plan.json")
    private boolean dry;

    WeekPlanCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.plan(round, search.planOptions(), new ProgressLine(console()));
        Path file = source().folder().resolve("plan.json");
        boolean kept = Files.exists(file);
        if (!dry) {
            try {
                WholeFile.writeKeepingPrevious(file, PlanJson.text(plan));
            } catch (DiskException fault) {
                return notWritten(fault);
            }
        }
        List<String> text = new ArrayList<>(new WeekText(round, plan).lines());
        text.add(
                dry
                        ? "plan.json was not written."
                        : "Written: " + file + (kept ? " (the previous one is plan.json.bak)" : ""));
        if (!dry) {
            text.add(
                    "Next: wadeplan week verify " + folderWords() + ", wadeplan pack " + folderWords() + " --out pack");
        }
        int code = show(round, plan.findings(), plan.week(), text);
        return plan.complete() ? code : ExitCode.NO_FEASIBLE_PLAN;
    }
}
