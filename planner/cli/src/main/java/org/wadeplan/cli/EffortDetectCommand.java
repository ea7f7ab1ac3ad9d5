package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.effort.Detection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Sub-reaches or visits that it takes to meet a species that is there. */
@Command(
        name = "detect",
        mixinStandardHelpOptions = true,
        description = "how many sub-reaches or visits it takes to meet a species that is there, and what blanks say")
final class EffortDetectCommand implements Callable<Integer> {

    @Option(
            names = "--per-unit",
            paramLabel = "P",
            required = true,
            description = "probability of meeting it in one sub-reach or visit where it is there, such as 0.3")
    private double perUnit;

    @Option(names = "--target", paramLabel = "P", description = "probability wanted (default: ${DEFAULT-VALUE})")
    private double target = 0.9;

    @Option(
            names = "--presence",
            paramLabel = "P",
            description = "how likely it is there before anyone looked (default: ${DEFAULT-VALUE})")
    private double presence = 0.5;

    @Option(names = "--json", description = "print one JSON document on standard output")
    private boolean json;

    private final Console console;

    EffortDetectCommand(Console console) {
        this.console = console;
    }

    /**
     * What was asked and found.
     *
     * @param blanksTo5Pct blank units after which it is there with 5 % or less
     */
    record Answer(
            double perUnit,
            double target,
            double presence,
            int unitsNeeded,
            List<Double> probabilityByUnits,
            int blanksTo5Pct,
            String caution) {}

    @Override
    public Integer call() {
        Optional<Problem> wrong = SumInputs.between("--per-unit", perUnit, 0, 1)
                .or(() -> SumInputs.between("--target", target, 0, 1))
                .or(() -> SumInputs.between("--presence", presence, 0, 1));
        if (wrong.isPresent()) {
            console.stopped(json, "wadeplan effort detect", wrong.get());
            return ExitCode.USAGE;
        }
        Answer answer = answer();
        if (json) {
            console.out().print(JsonDocument.text("wadeplan effort detect", "", List.of(), answer));
        } else {
            lines(answer).forEach(console::line);
        }
        return ExitCode.FINE;
    }

    private Answer answer() {
        List<Double> byUnits = new ArrayList<>();
        for (int units = 1; units <= 10; units++) {
            byUnits.add(Detection.probability(perUnit, units));
        }
        return new Answer(
                perUnit,
                target,
                presence,
                Detection.unitsNeeded(perUnit, target),
                List.copyOf(byUnits),
                Detection.blanksNeeded(presence, perUnit, 0.05),
                Detection.CAUTION);
    }

    private static List<String> lines(Answer answer) {
        List<String> text = new ArrayList<>();
        text.add(answer.unitsNeeded() + (answer.unitsNeeded() == 1 ? " unit meets" : " units meet") + " it with "
                + Quantity.words(100 * answer.target(), "%") + " where each meets it with "
                + Quantity.words(100 * answer.perUnit(), "%") + ".");
        TextTable table = new TextTable("units", "met at least once");
        for (int i = 0; i < answer.probabilityByUnits().size(); i++) {
            table.row(
                    Integer.toString(i + 1),
                    String.format(
                            Locale.ROOT, "%.4f", answer.probabilityByUnits().get(i)));
        }
        text.addAll(table.lines());
        text.add("Where it was there with " + Quantity.words(100 * answer.presence(), "%") + " beforehand, "
                + answer.blanksTo5Pct() + " blank units leave 5 % or less.");
        text.addAll(EffortText.cautions(List.of(answer.caution())));
        return text;
    }
}
