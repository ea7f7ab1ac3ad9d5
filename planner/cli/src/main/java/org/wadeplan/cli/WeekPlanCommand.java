package org.wadeplan.cli;

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
        RoundPlan plan = RoundPlanner.plan(round, search.planOptions(), new ProgressLine(console()));
        if (!dry) {
            try {
                WholeFile.writeKeepingPrevious(source().folder().resolve("plan.json"), PlanJson.text(plan));
            } catch (DiskException fault) {
                console().progress("wadeplan: " + fault.problem().sentence());
                return ExitCode.INVALID_INPUT;
            }
        }
        List<String> text = WeekText.lines(round, plan);
        int code = show(round, plan.findings(), plan.week(), text);
        return plan.complete() ? code : ExitCode.NO_FEASIBLE_PLAN;
    }
}
