package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads the output columns of a table and the order of their values. */
final class OutputColumns {

    private final String file;
    private final List<Problem> problems;

    OutputColumns(String file, List<Problem> problems) {
        this.file = file;
        this.problems = problems;
    }

    List<TableOutput> read(List<XmlElement> elements) {
        List<TableOutput> outputs = new ArrayList<>();
        for (XmlElement output : elements) {
            String name =
                    output.attribute("name").or(() -> output.attribute("label")).orElse("");
            Optional<ValueType> type = output.attribute("typeRef").flatMap(ValueType::named);
            outputs.add(new TableOutput(output.attribute("id").orElse(""), name, type, values(output, name)));
            output.child("defaultOutputEntry").ifPresent(standIn -> refuseDefault(standIn, name));
        }
        return List.copyOf(outputs);
    }

    private List<String> values(XmlElement output, String name) {
        String text =
                output.child("outputValues").flatMap(XmlElement::innerText).orElse("");
        if (text.isEmpty() || text.equals("-")) {
            return List.of();
        }
        Optional<List<String>> values = Literals.list(text);
        if (values.isEmpty()) {
            problems.add(Problem.warning(
                    "output-values-not-a-list",
                    SourcePlace.line(file, output.line()).row("output values").column(name),
                    "\"" + text + "\" is no list of results, so it is not held against the rules",
                    "texts in quotation marks, numbers, true or false, parted by commas",
                    "list the results"));
        }
        return values.orElse(List.of());
    }

    private void refuseDefault(XmlElement standIn, String name) {
        problems.add(Problem.error(
                "default-output-refused",
                SourcePlace.line(file, standIn.line()).column(name),
                "a default output, used where no rule matches",
                "no default: a case that no rule covers has to be seen",
                "delete the default and write a rule for the cases that it was meant for"));
    }

    /** PRIORITY and OUTPUT ORDER say nothing without an order, and a result outside the list has no place in it. */
    static List<Problem> check(DecisionTable table, SourcePlace place) {
        List<Problem> problems = new ArrayList<>();
        boolean ordered =
                table.outputs().stream().anyMatch(output -> !output.values().isEmpty());
        if (table.hitPolicy().byOutputValues() && !ordered) {
            problems.add(Problem.error(
                    "output-order-missing",
                    place,
                    "the hit policy " + table.hitPolicy().word() + ", and no output lists its values",
                    "outputValues, first the one that goes before the others",
                    "list the output values in their order"));
        }
        for (TableRule rule : table.rules()) {
            for (int column = 0; column < table.outputs().size(); column++) {
                TableOutput output = table.outputs().get(column);
                Optional<String> given = rule.outputs().get(column);
                // An unknown method is reported by its name already, unless the order of the outputs decides.
                boolean asked =
                        table.hitPolicy().byOutputValues() || !output.name().equals(DecisionTable.METHOD_OUTPUT);
                boolean listed = output.values().isEmpty()
                        || given.map(output.values()::contains).orElse(true);
                if (asked && !listed) {
                    problems.add(Problem.error(
                            "output-not-listed",
                            SourcePlace.part(table.file(), "rule " + rule.number())
                                    .column(output.name()),
                            "the output \"" + given.orElse("") + "\", which the column's output values lack",
                            String.join(", ", output.values()),
                            "correct the output, or add it to the output values"));
                }
            }
        }
        return problems;
    }
}
