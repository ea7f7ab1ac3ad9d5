package org.wadeplan.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * A command on a round folder: reads and checks it, stops with every problem where it can't be used, and goes on
 * otherwise.
 */
abstract class RoundCommand implements Callable<Integer> {

    @Mixin
    private RoundOptions roundOptions = new RoundOptions();

    @Option(names = "--json", description = "print one JSON document on standard output")
    private boolean json;

    @Option(
            names = "--at",
            paramLabel = "INSTANT",
            description = "the time it is taken to be, such as 2027-09-05T18:00:00Z (default: now)")
    private Optional<Instant> at = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli fills it in before call()
    private CommandSpec spec;

    private final Console console;

    RoundCommand(Console console) {
        this.console = console;
    }

    /** The command's own work on a round without errors. */
    abstract int run(Round round);

    @Override
    public final Integer call() {
        Checked<Round> checked = roundOptions.read();
        if (checked.value().isEmpty() || checked.hasErrors()) {
            return refused(checked.problems());
        }
        showProblems(checked.problems());
        return run(checked.value().get());
    }

    /** What a command does with a folder that has errors: shows all of them and stops. */
    int refused(List<Problem> problems) {
        if (json) {
            console.out().print(JsonDocument.text(commandWords(), "", problems, List.of()));
        } else {
            console.problems(problems);
            console.err().println("Nothing was planned or written: mend the errors above first.");
        }
        return ExitCode.INVALID_INPUT;
    }

    final Console console() {
        return console;
    }

    final RoundOptions source() {
        return roundOptions;
    }

    final Instant now() {
        return at.orElseGet(() -> console.clock().instant());
    }

    /** Prints the result as JSON or as lines of text, with findings, and gives 1 where a finding is an error. */
    final int show(Round round, List<Problem> findings, Object result, List<String> text) {
        if (json) {
            List<Problem> sorted = new ArrayList<>(findings);
            sorted.sort(Problem.WORST_FIRST);
            console.out().print(JsonDocument.text(commandWords(), round.header().id(), sorted, result));
        } else {
            text.forEach(console::line);
            console.problems(findings);
        }
        boolean errors = findings.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
        return errors ? ExitCode.FINDINGS : ExitCode.FINE;
    }

    private void showProblems(List<Problem> problems) {
        if (!json) {
            console.problems(problems.stream()
                    .filter(problem -> problem.severity() != Severity.NOTE)
                    .toList());
        }
    }

    private String commandWords() {
        return spec.qualifiedName(" ");
    }
}
