package org.wadeplan.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.method.CsvTableWriter;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.method.DmnEdit;
import org.wadeplan.planner.method.DmnWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Carries a table between a modeller's DMN and a spreadsheet's CSV. */
@Command(
        name = "convert",
        mixinStandardHelpOptions = true,
        description = "write a decision table as CSV for a spreadsheet, or as DMN again, with the same cells, ids and"
                + " annotations")
final class MethodConvertCommand implements Callable<Integer> {

    @Parameters(paramLabel = "TABLE", description = "the table: a DMN or CSV file")
    private Path table = Path.of("method.dmn");

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "what to write: .csv or .dmn")
    private Path out = Path.of("method.csv");

    @Option(
            names = "--onto",
            paramLabel = "DMN",
            description =
                    "a DMN file whose layout, ids and everything else is kept: only cells that differ are written")
    private Optional<Path> onto = Optional.empty();

    private final Console console;

    MethodConvertCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Checked<DecisionTable> read = DecisionTableReader.read(table, String.valueOf(table.getFileName()));
        List<Problem> problems = new ArrayList<>(read.problems());
        Optional<Checked<DecisionTable>> frame =
                onto.map(path -> DecisionTableReader.read(path, String.valueOf(path.getFileName())));
        frame.ifPresent(checked -> problems.addAll(checked.problems()));
        console.problems(problems.stream().sorted(Problem.WORST_FIRST).toList());
        if (read.hasErrors() || frame.map(Checked::hasErrors).orElse(false)) {
            return ExitCode.INVALID_INPUT;
        }
        DecisionTable cells = read.value().orElseThrow();
        Optional<DecisionTable> original = frame.flatMap(Checked::value);
        if (original.isPresent() && !DmnEdit.sameFrame(original.get(), cells)) {
            return refused(
                    "the two tables differ in columns, allowed values, hit policy or the order of rules",
                    "the same ones; new rules at the end");
        }
        try {
            WholeFile.writeKeepingPrevious(out, text(cells, original));
            console.line("Written: " + out + ", " + cells.rules().size() + " rules");
            return ExitCode.FINE;
        } catch (DiskException fault) {
            console.stopped(false, "method convert", fault.problem());
            return ExitCode.INVALID_INPUT;
        } catch (IOException fault) {
            return refused("the file given by --onto can't be read", "a DMN file");
        }
    }

    private String text(DecisionTable cells, Optional<DecisionTable> original) throws IOException {
        if (out.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return CsvTableWriter.text(cells);
        }
        return original.isPresent()
                ? new String(
                        DmnEdit.written(Files.readAllBytes(onto.orElseThrow()), original.get(), cells),
                        StandardCharsets.UTF_8)
                : DmnWriter.text(cells);
    }

    private int refused(String found, String expected) {
        console.stopped(
                false,
                "method convert",
                Problem.error("wrong-use", SourcePlace.file("--onto"), found, expected, "give another file"));
        return ExitCode.USAGE;
    }
}
