package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.method.GivenValues;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts one case to a table. */
@Command(
        name = "try",
        mixinStandardHelpOptions = true,
        description = "put one case to a decision table, such as max_depth_m=0.75 night_access=true; what is left out"
                + " counts as not known")
final class MethodTryCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "TABLE", description = "the table: a DMN or CSV file")
    private Path table = Path.of("method.dmn");

    @Parameters(index = "1..*", paramLabel = "INPUT=VALUE", description = "what is known")
    private List<String> given = List.of();

    @Option(names = "--json", description = "print one JSON document on standard output")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli fills it in before call()
    private CommandSpec spec;

    private final Console console;

    MethodTryCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Checked<DecisionTable> read = DecisionTableReader.read(table, String.valueOf(table.getFileName()));
        if (read.value().isEmpty() || read.hasErrors()) {
            return ended(read.problems(), Optional.empty(), ExitCode.INVALID_INPUT);
        }
        DecisionTable decisions = read.value().get();
        Checked<Map<String, CaseValue>> values = GivenValues.of(decisions, given);
        if (values.value().isEmpty() || values.hasErrors()) {
            return ended(values.problems(), Optional.empty(), ExitCode.USAGE);
        }
        MethodDecision decision =
                MethodChooser.decide(decisions, "this case", values.value().get());
        boolean settled = decision.chosen().isPresent();
        return ended(read.problems(), Optional.of(decision), settled ? ExitCode.FINE : ExitCode.FINDINGS);
    }

    private int ended(List<Problem> problems, Optional<MethodDecision> decision, int code) {
        if (json) {
            console.out()
                    .print(JsonDocument.text(
                            spec.qualifiedName(" "),
                            "",
                            problems,
                            decision.<Object>map(one -> one).orElse(List.of())));
            return code;
        }
        decision.ifPresent(one -> {
            console.line("Rule " + MethodWords.rule(one) + ", method " + MethodWords.method(one));
            TextTable.hanging("", MethodWords.why(one)).forEach(console::line);
        });
        console.out().flush();
        console.problems(problems.stream()
                .filter(problem -> problem.severity() != Severity.NOTE)
                .toList());
        return code;
    }
}
