package org.wadeplan.cli;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * A command on a round folder: reads and checks it, stops with every problem where it can't be used, and goes on
 * otherwise. What was noticed while reading is shown at the end, where the reader's eyes are, with the findings.
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
    private List<Problem> reading = List.of();

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
        reading = checked.problems();
        return run(checked.value().get());
    }

    /** Whether the round's notes are shown too, such as columns that nobody asked for. */
    boolean showsNotes() {
        return false;
    }

    /** What a command does with a folder that has errors: shows all of them and stops. */
    final int refused(List<Problem> problems) {
        if (json) {
            console.out().print(JsonDocument.text(commandWords(), "", problems, List.of()));
        } else {
            console.problems(problems);
            console.progress("Nothing was planned or written: mend the errors above first.");
        }
        return ExitCode.INVALID_INPUT;
    }

    /** Whether this round's method table fails some of its sites, so that no plan may be made; then all is said. */
    final boolean refusedByTable(Round round) {
        List<Problem> refusals = RoundPlanner.refusals(round);
        if (refusals.isEmpty()) {
            return false;
        }
        if (json) {
            console.out().print(JsonDocument.text(commandWords(), round.header().id(), refusals, List.of()));
        } else {
            console.problems(refusals);
            console.progress("Nothing was planned or written: the method table gives these sites no method, or two."
                    + " See: wadeplan method audit "
                    + Values.typed(
                            roundOptions.folder().resolve(round.methodTable().file())) + " --round "
                    + folderWords());
        }
        return true;
    }

    /** Stops with everything that is wrong with what was asked for. */
    final int stopped(List<Problem> problems, int code) {
        if (json) {
            console.out().print(JsonDocument.text(commandWords(), "", problems, List.of()));
        } else {
            console.problems(problems);
        }
        return code;
    }

    /** Stops where a file or folder can't be written. */
    final int notWritten(DiskException fault) {
        console.stopped(json, commandWords(), fault.problem());
        return ExitCode.INVALID_INPUT;
    }

    /** Stops where options do not go together or name what is not there. */
    final int stopped(Problem wrongUse) {
        console.stopped(json, commandWords(), wrongUse);
        return ExitCode.USAGE;
    }

    /** Stops where an option names something that this round does not have. */
    final int unknown(String option, String value, List<String> known) {
        console.stopped(
                json,
                commandWords(),
                Problem.error(
                        "wrong-use",
                        SourcePlace.file(option),
                        "this round has no \"" + value + "\"",
                        String.join(", ", known),
                        "give one of these"));
        return ExitCode.USAGE;
    }

    /** The round's folder as it was given, to name in a hint of what to type next. */
    final String folderWords() {
        return Values.typed(roundOptions.folder());
    }

    /** What was noticed while reading the round: warnings and notes, no errors. */
    final List<Problem> reading() {
        return reading;
    }

    final Console console() {
        return console;
    }

    final RoundOptions source() {
        return roundOptions;
    }

    /** The time that was given with {@code --at}; empty where none was. */
    final Optional<Instant> at() {
        return at;
    }

    final Instant now() {
        return at.orElseGet(() -> console.clock().instant());
    }

    /** Prints the result as JSON or as lines of text, with findings, and gives 1 where a finding is an error. */
    final int show(Round round, List<Problem> findings, Object result, List<String> text) {
        if (json) {
            console.out()
                    .print(JsonDocument.text(commandWords(), round.header().id(), withReading(findings, true), result));
        } else {
            text.forEach(console::line);
            console.out().flush();
            console.problems(withReading(findings, showsNotes()));
        }
        boolean errors = findings.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
        return errors ? ExitCode.FINDINGS : ExitCode.FINE;
    }

    /** Findings together with what was noticed while reading, worst first, each once. */
    private List<Problem> withReading(List<Problem> findings, boolean notes) {
        return Stream.concat(
                        reading.stream()
                                .filter(problem -> notes || problem.severity() != Severity.NOTE || isRepair(problem)),
                        findings.stream())
                .distinct()
                .sorted(Problem.WORST_FIRST)
                .toList();
    }

    /** Working on a line that was changed for this run is never silent. */
    private static boolean isRepair(Problem problem) {
        return problem.code().endsWith("-repaired");
    }

    private String commandWords() {
        return spec.qualifiedName(" ");
    }
}
