package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.List;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.pack.ShareFile;
import org.wadeplan.planner.pack.ShareKind;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One file of the pack alone. */
@Command(mixinStandardHelpOptions = true, description = "write this one file of the pack")
final class ShareCommand extends RoundCommand {

    @Mixin
    private SearchOptions search = new SearchOptions();

    private final ShareKind kind;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "the file to write")
    private Path out = Path.of("share");

    ShareCommand(Console console, ShareKind kind) {
        super(console);
        this.kind = kind;
    }

    @Override
    int run(Round round) {
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.plan(round, search.planOptions(), new ProgressLine(console()));
        try {
            List<Problem> problems = new ShareFile(round, plan, now()).write(kind, out);
            String done = problems.isEmpty()
                    ? out + " written, plan " + plan.version().label()
                    : out + " was not written";
            return show(round, problems, out.toString(), List.of(done));
        } catch (DiskException fault) {
            return notWritten(fault);
        }
    }
}
