package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes a decision table as CSV with the same cells, ids and annotations; {@link DecisionTableReader} reads it back. */
public final class CsvTableWriter {

    private CsvTableWriter() {}

    /** Lines that end in a newline, UTF-8, comma between cells. */
    public static String text(DecisionTable table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("table", table.name()));
        rows.add(List.of("hit policy", table.hitPolicy().word()));
        rows.add(row("rule", table, TableInput::name, TableOutput::name, "annotation"));
        rows.add(row("kind", table, input -> "input", output -> "output", "annotation"));
        rows.add(row(
                "type",
                table,
                input -> input.type().word(),
                output -> output.type().map(ValueType::word).orElse(""),
                ""));
        rows.add(row("label", table, TableInput::label, output -> "", ""));
        rows.add(row(
                "allowed",
                table,
                input -> input.allowed().map(TableCell::text).orElse(""),
                output -> output.values().stream()
                        .map(value -> outputCell(output, value))
                        .collect(Collectors.joining(",")),
                ""));
        table.rules().forEach(rule -> rows.add(row(table, rule)));
        return rows.stream()
                .map(cells -> cells.stream().map(CsvTableWriter::field).collect(Collectors.joining(",")) + "\n")
                .collect(Collectors.joining());
    }

    private static List<String> row(
            String word,
            DecisionTable table,
            Function<TableInput, String> input,
            Function<TableOutput, String> output,
            String last) {
        List<String> cells = new ArrayList<>(List.of(word));
        table.inputs().forEach(column -> cells.add(input.apply(column)));
        table.outputs().forEach(column -> cells.add(output.apply(column)));
        cells.add(last);
        return cells;
    }

    private static List<String> row(DecisionTable table, TableRule rule) {
        List<String> cells = new ArrayList<>(List.of(rule.id()));
        rule.cells().forEach(cell -> cells.add(cell.text().isEmpty() ? "-" : cell.text()));
        for (int column = 0; column < rule.outputs().size(); column++) {
            TableOutput output = table.outputs().get(column);
            cells.add(rule.outputs()
                    .get(column)
                    .map(value -> outputCell(output, value))
                    .orElse("-"));
        }
        cells.add(rule.annotation());
        return cells;
    }

    /** A text that looks like a number stays a text by its quotation marks. */
    static String outputCell(TableOutput output, String value) {
        boolean text = output.type().map(type -> type == ValueType.TEXT).orElse(true);
        boolean looksOther = Literals.one(value).isPresent() || value.contains("\"") || value.contains(",");
        return text && (looksOther && output.type().isPresent()) ? CellText.of(CaseValue.of(value)) : value;
    }

    private static String field(String cell) {
        boolean quote = cell.chars().anyMatch(c -> c == ',' || c == ';' || c == '"' || c == '\n' || c == '\r');
        return quote ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
