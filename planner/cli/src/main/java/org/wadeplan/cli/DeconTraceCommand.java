package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.decon.trace.Find;
import org.wadeplan.planner.decon.trace.FindEvent;
import org.wadeplan.planner.decon.trace.FindReader;
import org.wadeplan.planner.decon.trace.FindTrace;
import org.wadeplan.planner.decon.trace.FindWords;
import org.wadeplan.planner.decon.trace.TraceReport;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What follows from a pest that was seen late. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        description =
                "a pest was seen: what is exposed, where it may have come from and gone to, which cleanings change,"
                        + " whom to tell; ends with 1 where a later leg breaks or a water may have received it")
final class DeconTraceCommand extends RoundCommand {

    @Option(names = "--water", paramLabel = "W", description = "the water it was seen in")
    private Optional<String> water = Optional.empty();

    @Option(names = "--pest", paramLabel = "P", description = "the pest")
    private Optional<String> pest = Optional.empty();

    @Option(
            names = "--seen",
            paramLabel = "TIME",
            description = "when: 2027-09-07T17:20 in the round's zone, or an instant such as 2027-09-07T17:20:00Z")
    private Optional<String> seen = Optional.empty();

    @Option(names = "--site", paramLabel = "S", description = "the site where it was seen")
    private Optional<String> site = Optional.empty();

    @Option(
            names = "--event",
            paramLabel = "FILE",
            description = "read the find from an event file of kind pest-found instead")
    private Optional<Path> event = Optional.empty();

    @Mixin
    private SearchOptions search = new SearchOptions();

    DeconTraceCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        List<Problem> both = eventAndOptions();
        if (!both.isEmpty()) {
            return stopped(both, ExitCode.USAGE);
        }
        Checked<FindWords> words = event.map(FindEvent::read)
                .orElseGet(() -> Checked.of(new FindWords(water, pest, site, seen, Optional.empty())));
        String source = event.map(Path::toString).orElse("find");
        Checked<Find> find = words.then(given -> FindReader.read(round, given, source));
        if (find.value().isEmpty()) {
            return stopped(find.problems(), event.isPresent() ? ExitCode.INVALID_INPUT : ExitCode.USAGE);
        }
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.inForce(round, search.planOptions(), new ProgressLine(console()));
        TraceReport report = FindTrace.of(round, plan, find.value().get());
        return show(round, report.broken(), report, new TraceText(round).lines(report, WeekInForce.words(round)));
    }

    private List<Problem> eventAndOptions() {
        List<Problem> problems = new ArrayList<>();
        if (event.isPresent()) {
            water.ifPresent(given -> problems.add(twice("--water")));
            pest.ifPresent(given -> problems.add(twice("--pest")));
            seen.ifPresent(given -> problems.add(twice("--seen")));
            site.ifPresent(given -> problems.add(twice("--site")));
        }
        return problems;
    }

    private static Problem twice(String option) {
        return Problem.error(
                "wrong-use",
                SourcePlace.file(option),
                "given together with --event, which says it already",
                "one of the two",
                "leave one out");
    }
}
