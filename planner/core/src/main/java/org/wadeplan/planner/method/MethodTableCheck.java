package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.Round;

/** Checks that a table's names mean something in the round: its inputs, its words, its methods. */
public final class MethodTableCheck {

    private static final Pattern CREW = Pattern.compile("\\d{1,3}");

    private final DecisionTable table;
    private final List<Problem> problems = new ArrayList<>();

    private MethodTableCheck(DecisionTable table) {
        this.table = table;
    }

    /** Every name in the table that the round does not know, and every site value that the table is not meant for. */
    public static List<Problem> problems(DecisionTable table, Round round) {
        List<Problem> all = new ArrayList<>(problems(table, round.methods()));
        all.addAll(MethodFindings.outsideTable(table, round.sites(), round.consents()));
        return all.stream().sorted(Problem.WORST_FIRST).toList();
    }

    /** The same for the names alone, for a reader that has no round yet. */
    public static List<Problem> problems(DecisionTable table, List<Method> methods) {
        MethodTableCheck check = new MethodTableCheck(table);
        check.inputs();
        check.methods(methods.stream().map(Method::id).toList());
        check.crews();
        return check.problems.stream().sorted(Problem.WORST_FIRST).toList();
    }

    private void inputs() {
        for (TableInput input : table.inputs()) {
            SourcePlace place = SourcePlace.file(table.file()).column(input.name());
            SiteInput.named(input.name())
                    .ifPresentOrElse(
                            known -> type(input, known, place),
                            () -> problems.add(Problem.error(
                                    "input-unknown",
                                    place,
                                    "the input \"" + input.name() + "\" is no condition of a site",
                                    SiteInput.allNames(),
                                    "rename the input in the table")));
        }
    }

    private void type(TableInput input, SiteInput known, SourcePlace place) {
        if (input.type() != known.type()) {
            problems.add(Problem.error(
                    "input-type-wrong",
                    place,
                    "the type " + input.type().word(),
                    known.type().word(),
                    "change the input's type in the table"));
        } else if (known == SiteInput.WET_STATE) {
            int column = table.inputs().indexOf(input);
            table.rules().forEach(rule -> words(rule, column, input));
        }
    }

    /** A word that no site can have makes a rule that never matches. */
    private void words(TableRule rule, int column, TableInput input) {
        if (rule.cells().get(column).test() instanceof UnaryTest.Texts asked
                && SiteInput.WET_STATE.possible() instanceof UnaryTest.Texts possible) {
            TreeSet<String> strange = new TreeSet<>(asked.texts());
            strange.removeAll(possible.texts());
            strange.forEach(word -> problems.add(Problem.error(
                    "word-unknown",
                    at(rule).column(input.name()),
                    "the word \"" + word + "\"",
                    String.join(", ", possible.texts()),
                    "correct the word in the table")));
        }
    }

    private void methods(List<String> known) {
        OptionalInt column = table.methodColumn();
        if (column.isEmpty()) {
            problems.add(Problem.error(
                    "method-output-missing",
                    SourcePlace.file(table.file()),
                    "several outputs, and none is called " + DecisionTable.METHOD_OUTPUT,
                    "an output called " + DecisionTable.METHOD_OUTPUT,
                    "rename the output that gives the method"));
            return;
        }
        for (TableRule rule : table.rules()) {
            String method = rule.outputs().get(column.getAsInt()).orElse("");
            if (!known.contains(method)) {
                problems.add(Problem.error(
                        "method-unknown",
                        at(rule).column(DecisionTable.METHOD_OUTPUT),
                        method.isEmpty() ? "no method" : "the method \"" + method + "\", which methods.csv lacks",
                        String.join(", ", known),
                        "correct the method here or add it to methods.csv"));
            }
        }
    }

    private void crews() {
        OptionalInt column = table.outputColumn(DecisionTable.CREW_OUTPUT);
        if (column.isEmpty()) {
            return;
        }
        for (TableRule rule : table.rules()) {
            rule.outputs()
                    .get(column.getAsInt())
                    .filter(text -> !CREW.matcher(text).matches())
                    .ifPresent(text -> problems.add(Problem.error(
                            "crew-min-not-whole",
                            at(rule).column(DecisionTable.CREW_OUTPUT),
                            "the smallest crew \"" + text + "\"",
                            "a whole number of people, or - for none",
                            "correct the cell")));
        }
    }

    private SourcePlace at(TableRule rule) {
        return SourcePlace.part(table.file(), "rule " + rule.number());
    }
}
