package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads the rules of a table. A rule with a fault is reported and left out; the others keep their numbers. */
final class RuleRows {

    private final String file;
    private final List<TableInput> inputs;
    private final List<TableOutput> outputs;
    private final List<Problem> problems;
    private int emptyCells;

    RuleRows(String file, List<TableInput> inputs, List<TableOutput> outputs, List<Problem> problems) {
        this.file = file;
        this.inputs = inputs;
        this.outputs = outputs;
        this.problems = problems;
    }

    List<TableRule> read(List<XmlElement> rows) {
        List<TableRule> rules = new ArrayList<>();
        reportTwins(rows);
        for (int row = 0; row < rows.size(); row++) {
            rule(rows.get(row), row + 1).ifPresent(rules::add);
        }
        if (emptyCells > 0) {
            problems.add(Problem.note(
                    "cells-empty",
                    SourcePlace.file(file),
                    emptyCells + " empty input cells, read as \"-\": any value",
                    "\"-\" for any value",
                    "write \"-\" if that is meant"));
        }
        return List.copyOf(rules);
    }

    private void reportTwins(List<XmlElement> rows) {
        Map<String, Integer> seen = new HashMap<>();
        for (int row = 0; row < rows.size(); row++) {
            int number = row + 1;
            XmlElement element = rows.get(row);
            element.attribute("id")
                    .map(id -> seen.putIfAbsent(id, number))
                    .ifPresent(first -> problems.add(Problem.error(
                            "rule-id-twice",
                            SourcePlace.line(file, element.line()).row("rule " + number),
                            "the id " + element.attribute("id").orElse("") + ", which rule " + first + " has too",
                            "an id of its own for each rule",
                            "give the rule another id")));
        }
    }

    /** What a column without a type holds, judged by its first cell that asks something. */
    static ValueType guessType(List<XmlElement> rows, int column) {
        return rows.stream()
                .flatMap(row -> row.children("inputEntry").skip(column).limit(1))
                .flatMap(cell -> cell.innerText().stream())
                .filter(text -> !text.isEmpty() && !text.equals("-"))
                .findFirst()
                .map(text -> text.contains("\"")
                        ? ValueType.TEXT
                        : text.contains("true") || text.contains("false") ? ValueType.TRUTH : ValueType.NUMBER)
                .orElse(ValueType.TEXT);
    }

    private Optional<TableRule> rule(XmlElement row, int number) {
        SourcePlace place = SourcePlace.line(file, row.line()).row("rule " + number);
        List<XmlElement> cells = row.children("inputEntry").toList();
        List<XmlElement> results = row.children("outputEntry").toList();
        boolean inputsFit = fits(cells.size(), inputs.size(), "input", place);
        boolean outputsFit = fits(results.size(), outputs.size(), "output", place);
        if (!inputsFit || !outputsFit) {
            return Optional.empty();
        }
        List<TableCell> tests = tests(cells, number);
        List<Optional<String>> literals = new ArrayList<>();
        int faults = 0;
        for (int column = 0; column < results.size(); column++) {
            String text = results.get(column).innerText().orElse("");
            faults += literal(text, column, literals, place) ? 0 : 1;
        }
        return faults > 0 || tests.size() < inputs.size()
                ? Optional.empty()
                : Optional.of(new TableRule(number, id(row, number), tests, literals, annotation(row)));
    }

    private List<TableCell> tests(List<XmlElement> cells, int number) {
        List<TableCell> tests = new ArrayList<>();
        CellReading reading = new CellReading(file, problems);
        for (int column = 0; column < cells.size(); column++) {
            XmlElement cell = cells.get(column);
            TableInput input = inputs.get(column);
            String text = cell.innerText().orElse("");
            emptyCells += text.isEmpty() ? 1 : 0;
            SourcePlace place =
                    SourcePlace.line(file, cell.line()).row("rule " + number).column(input.name());
            reading.read(text, input.type(), place).ifPresent(tests::add);
        }
        return List.copyOf(tests);
    }

    private boolean fits(int found, int wanted, String kind, SourcePlace place) {
        if (found == wanted) {
            return true;
        }
        problems.add(Problem.error(
                "cell-count",
                place,
                String.format(Locale.ROOT, "%d %s cells", found, kind),
                String.format(Locale.ROOT, "%d, one for each %s column", wanted, kind),
                "add or delete cells; a cell that asks nothing holds \"-\""));
        return false;
    }

    /** Adds the literal of an output cell; false where the cell is something else. */
    private boolean literal(String text, int column, List<Optional<String>> literals, SourcePlace place) {
        if (text.isEmpty() || text.equals("-") || text.equals("null")) {
            literals.add(Optional.empty());
            return true;
        }
        Optional<String> value = Literals.one(text);
        if (value.isEmpty()) {
            problems.add(Problem.error(
                    "output-beyond-literal",
                    place.column(outputs.get(column).name()),
                    "the output \"" + text + "\"",
                    "one text in quotation marks, one number, true or false",
                    "write the result itself, such as \"EFISH\""));
        } else {
            literals.add(value);
        }
        return value.isPresent();
    }

    private static String id(XmlElement row, int number) {
        return row.attribute("id").orElse("rule " + number);
    }

    private static String annotation(XmlElement row) {
        String entries = row.children("annotationEntry")
                .flatMap(entry -> entry.innerText().stream())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return entries.isEmpty()
                ? row.child("description").map(XmlElement::text).orElse("").strip()
                : entries;
    }
}
