package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.method.MethodTableCheck;
import org.wadeplan.planner.method.audit.AuditReport;
import org.wadeplan.planner.method.audit.TableAudit;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is wrong with a decision table, and which sites it hits. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        description = "prove a decision table complete and free of contradiction, or show each gap, contradiction,"
                + " overlap and needless rule with a case, the sites that it hits and a way to mend it")
final class MethodAuditCommand implements Callable<Integer> {

    @Parameters(paramLabel = "TABLE", description = "the table: a DMN or CSV file")
    private Path table = Path.of("method.dmn");

    @Option(names = "--round", paramLabel = "ROUND", description = "the round folder whose sites are to be named")
    private Optional<Path> round = Optional.empty();

    @Option(names = "--json", description = "print one JSON document on standard output")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli fills it in before call()
    private CommandSpec spec;

    private final Console console;

    MethodAuditCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Checked<DecisionTable> read = DecisionTableReader.read(table, String.valueOf(table.getFileName()));
        Optional<Checked<Round>> sites = round.map(RoundReader::read);
        List<Problem> problems = new ArrayList<>(read.problems());
        sites.ifPresent(checked -> checked.problems().stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .forEach(problems::add));
        Optional<Round> known = sites.flatMap(Checked::value);
        if (read.hasErrors() || (sites.isPresent() && known.isEmpty())) {
            return refused(problems);
        }
        DecisionTable decisions = read.value().orElseThrow();
        known.ifPresent(found -> problems.addAll(MethodTableCheck.problems(decisions, found)));
        AuditReport report =
                known.map(found -> TableAudit.audit(decisions, found)).orElseGet(() -> TableAudit.audit(decisions));
        show(report, problems, known.map(found -> found.header().id()).orElse(""));
        boolean errors =
                report.hasErrors() || problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
        return errors ? ExitCode.FINDINGS : ExitCode.FINE;
    }

    private int refused(List<Problem> problems) {
        List<Problem> sorted = problems.stream().sorted(Problem.WORST_FIRST).toList();
        if (json) {
            console.out().print(JsonDocument.text(spec.qualifiedName(" "), "", sorted, List.of()));
        } else {
            console.problems(sorted);
            console.progress("Nothing was audited: mend the errors above first.");
        }
        return ExitCode.INVALID_INPUT;
    }

    private void show(AuditReport report, List<Problem> problems, String roundId) {
        List<Problem> sorted = problems.stream().sorted(Problem.WORST_FIRST).toList();
        if (json) {
            console.out().print(JsonDocument.text(spec.qualifiedName(" "), roundId, sorted, report));
            return;
        }
        AuditText.lines(report).forEach(console::line);
        console.out().flush();
        console.problems(sorted);
    }
}
