package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.plan.PlanCheck;
import org.wadeplan.planner.plan.PlanJson;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Checks a plan, edited by hand or not, with plain rules of its own. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "check plan.json against the round with plain rules that share no code with the planner")
final class WeekVerifyCommand extends RoundCommand {

    @Option(names = "--plan", paramLabel = "FILE", description = "the plan (default: plan.json in the round folder)")
    private Optional<Path> file = Optional.empty();

    WeekVerifyCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        Checked<RoundPlan> read = PlanJson.read(file.orElse(source().folder().resolve("plan.json")));
        if (read.value().isEmpty()) {
            return refused(read.problems());
        }
        RoundPlan plan = read.value().get();
        List<Problem> findings = PlanCheck.findings(round, plan);
        List<String> text = new ArrayList<>();
        text.add(
                "Plan " + plan.version().label() + ", " + plan.week().crewDays().size() + " crew-days, "
                        + plan.week().crewDays().stream()
                                .mapToInt(day -> day.visits().size())
                                .sum() + " visits checked.");
        if (findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR)) {
            text.add("No broken rule was found. That is a statement about this plan on paper, not about the river.");
        }
        return show(round, findings, findings, text);
    }
}
