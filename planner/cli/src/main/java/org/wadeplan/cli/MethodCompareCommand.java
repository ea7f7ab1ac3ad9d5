package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.compare.TableComparison;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changes from one version of a table to another. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "what changes from one table to another: edited cells, sites of the round that come out otherwise"
                + " and why, and the cases in which the two differ")
final class MethodCompareCommand implements Callable<Integer> {

    private static final int MOST_REGIONS = 30;

    @Parameters(index = "0", paramLabel = "TABLE_A", description = "the table so far")
    private Path before = Path.of("method.dmn");

    @Parameters(index = "1", paramLabel = "TABLE_B", description = "the table to come")
    private Path after = Path.of("method.dmn");

    @Option(names = "--round", paramLabel = "ROUND", description = "the round folder whose sites are to be looked at")
    private Optional<Path> round = Optional.empty();

    @Option(names = "--json", description = "print one JSON document on standard output")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli fills it in before call()
    private CommandSpec spec;

    private final Console console;

    MethodCompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Checked<DecisionTable> a = DecisionTableReader.read(before, String.valueOf(before.getFileName()));
        Checked<DecisionTable> b = DecisionTableReader.read(after, String.valueOf(after.getFileName()));
        Optional<Checked<Round>> sites = round.map(RoundReader::read);
        List<Problem> problems = Stream.of(
                        a.problems().stream(),
                        b.problems().stream(),
                        sites.stream().flatMap(checked -> checked.problems().stream()))
                .flatMap(part -> part)
                .filter(problem -> problem.severity() == Severity.ERROR)
                .distinct()
                .sorted(Problem.WORST_FIRST)
                .toList();
        Optional<Round> known = sites.flatMap(Checked::value);
        if (a.hasErrors() || b.hasErrors() || (sites.isPresent() && known.isEmpty())) {
            return ended(problems, Optional.empty(), ExitCode.INVALID_INPUT);
        }
        TableComparison comparison = TableComparison.of(
                a.value().orElseThrow(),
                b.value().orElseThrow(),
                known.map(SiteCase::of).orElse(List.of()));
        return ended(problems, Optional.of(comparison), ExitCode.FINE);
    }

    private int ended(List<Problem> problems, Optional<TableComparison> comparison, int code) {
        if (json) {
            Object result = comparison.<Object>map(one -> one).orElse(List.of());
            console.out().print(JsonDocument.text(spec.qualifiedName(" "), "", problems, result));
            return code;
        }
        comparison.ifPresent(one -> text(one).forEach(console::line));
        console.out().flush();
        console.problems(problems);
        return code;
    }

    private List<String> text(TableComparison comparison) {
        List<String> text = new ArrayList<>();
        text.add("From " + before + " to " + after);
        if (comparison.cells().isEmpty() && comparison.regions().isEmpty()) {
            text.add("No difference: every case comes out the same.");
            return text;
        }
        comparison.cells().forEach(cell -> text.addAll(TextTable.hanging("  edited  ", cell)));
        if (round.isPresent()) {
            text.add(comparison.sites().isEmpty() ? "No site of the round changes." : "Sites that change:");
        }
        comparison.sites().forEach(site -> {
            text.addAll(TextTable.hanging("  " + site.site() + "  ", site.before() + " becomes " + site.after()));
            site.reasons().forEach(reason -> text.addAll(TextTable.hanging("      ", reason)));
        });
        text.add(comparison.regions().isEmpty() ? "Every case comes out the same." : "Cases that come out otherwise:");
        comparison.regions().stream().limit(MOST_REGIONS).forEach(region -> {
            String where = region.where().isEmpty() ? "every case" : String.join("; ", region.where());
            text.addAll(TextTable.hanging("  - ", where + ": " + region.before() + " becomes " + region.after()));
        });
        if (!comparison.complete() || comparison.regions().size() > MOST_REGIONS) {
            text.add("  and more; --json lists what was found");
        }
        return text;
    }
}
