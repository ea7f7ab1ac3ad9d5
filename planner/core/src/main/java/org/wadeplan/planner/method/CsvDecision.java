package org.wadeplan.planner.method;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads a decision table from a spreadsheet's CSV into the elements that a DMN file would have, so that both are checked
 * by the same code. {@code docs/tables.md} describes the rows.
 */
final class CsvDecision {

    private static final List<String> HEAD_WORDS =
            List.of("table", "hit policy", "rule", "kind", "type", "label", "allowed");

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, CsvRows.Row> head = new LinkedHashMap<>();
    private final List<CsvRows.Row> rules = new ArrayList<>();

    private CsvDecision(String file) {
        this.file = file;
    }

    /** The decision as an element, with what was noticed on the way. */
    static Checked<XmlElement> read(byte[] bytes, String file) {
        Optional<List<CsvRows.Row>> rows = CsvRows.read(new String(bytes, StandardCharsets.UTF_8));
        if (rows.isEmpty()) {
            return Checked.failed(Problem.error(
                    "csv-quote-open",
                    SourcePlace.file(file),
                    "a quotation mark that is never closed",
                    "quotation marks in pairs; one inside a quoted cell is doubled",
                    "save the table again as CSV from your spreadsheet"));
        }
        CsvDecision decision = new CsvDecision(file);
        rows.get().forEach(decision::sort);
        return decision.element();
    }

    private void sort(CsvRows.Row row) {
        String word = row.cell(0).toLowerCase(Locale.ROOT);
        boolean isHead = HEAD_WORDS.contains(word) && !(word.equals("rule") && head.containsKey("rule"));
        if (isHead && (rules.isEmpty() || !head.containsKey("rule"))) {
            head.put(word, row);
        } else {
            rules.add(row);
        }
    }

    private Checked<XmlElement> element() {
        Optional<CsvRows.Row> names = Optional.ofNullable(head.get("rule"));
        if (names.isEmpty()) {
            return Checked.failed(Problem.error(
                    "csv-heading-missing",
                    SourcePlace.file(file),
                    "no row that starts with the word rule",
                    "a row with rule, then the name of each column",
                    "add it above the rules; docs/tables.md shows the form"));
        }
        List<XmlElement> inside = new ArrayList<>();
        List<String> kinds = kinds(names.get());
        for (int column = 1; column < names.get().cells().size(); column++) {
            switch (kinds.get(column)) {
                case "input" -> inside.add(input(names.get(), column));
                case "output" -> inside.add(output(names.get(), column));
                default -> {}
            }
        }
        rules.forEach(row -> inside.add(rule(row, names.get(), kinds)));
        Map<String, String> policy = new LinkedHashMap<>();
        headCell("hit policy", 1).ifPresent(word -> policy.put("hitPolicy", word));
        XmlElement table = element("decisionTable", policy, inside, names.get().line());
        Map<String, String> name = new LinkedHashMap<>();
        headCell("table", 1).ifPresent(word -> name.put("name", word));
        return Checked.of(element("decision", name, List.of(table), names.get().line()), problems);
    }

    /** By the row that says so; without one, inputs stand before the column method, outputs from it on. */
    private List<String> kinds(CsvRows.Row names) {
        List<String> kinds = new ArrayList<>(List.of(""));
        boolean outputs = false;
        for (int column = 1; column < names.cells().size(); column++) {
            String name = names.cell(column);
            outputs |= name.equals(DecisionTable.METHOD_OUTPUT);
            String guess = name.isEmpty() ? "" : name.equals("annotation") ? name : outputs ? "output" : "input";
            String kind = headCell("kind", column).orElse(guess);
            if (!List.of("input", "output", "annotation", "").contains(kind)) {
                problems.add(Problem.error(
                        "csv-kind-unknown",
                        SourcePlace.file(file).row("kind").column(name),
                        "the kind \"" + kind + "\"",
                        "input, output or annotation",
                        "correct the kind"));
            }
            kinds.add(kind);
        }
        return kinds;
    }

    private XmlElement input(CsvRows.Row names, int column) {
        Map<String, String> label = new LinkedHashMap<>();
        headCell("label", column).ifPresent(word -> label.put("label", word));
        Map<String, String> type = new LinkedHashMap<>();
        headCell("type", column).ifPresent(word -> type.put("typeRef", word));
        List<XmlElement> inside = new ArrayList<>();
        inside.add(element("inputExpression", type, List.of(text(names.cell(column), names.line())), names.line()));
        boolean words = holdsWords(column);
        headCell("allowed", column)
                .ifPresent(cell -> inside.add(element(
                        "inputValues",
                        Map.of(),
                        List.of(text(words ? quoted(cell) : cell, names.line())),
                        names.line())));
        return element("input", label, inside, names.line());
    }

    private XmlElement output(CsvRows.Row names, int column) {
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put("name", names.cell(column));
        headCell("type", column).ifPresent(word -> attributes.put("typeRef", word));
        headCell("label", column).ifPresent(word -> attributes.put("label", word));
        List<XmlElement> inside = new ArrayList<>();
        headCell("allowed", column)
                .ifPresent(cell -> inside.add(
                        element("outputValues", Map.of(), List.of(text(quoted(cell), names.line())), names.line())));
        return element("output", attributes, inside, names.line());
    }

    private XmlElement rule(CsvRows.Row row, CsvRows.Row names, List<String> kinds) {
        if (row.cells().size() > names.cells().size()) {
            problems.add(Problem.error(
                    "csv-row-too-long",
                    SourcePlace.line(file, row.line()).row(row.cell(0)),
                    row.cells().size() + " cells in this row, and "
                            + names.cells().size() + " columns",
                    "one cell for each column; a cell with a comma in it stands in quotation marks",
                    "put quotation marks around the cell that has the comma"));
        }
        List<XmlElement> inside = new ArrayList<>();
        for (int column = 1; column < names.cells().size(); column++) {
            String cell = row.cell(column);
            boolean words = holdsWords(column);
            switch (kinds.get(column)) {
                case "input" -> inside.add(entry("inputEntry", words ? quoted(cell) : cell, row.line()));
                case "output" -> inside.add(entry("outputEntry", literal(cell), row.line()));
                case "annotation" -> inside.add(entry("annotationEntry", cell, row.line()));
                default -> {}
            }
        }
        return element("rule", row.cell(0).isEmpty() ? Map.of() : Map.of("id", row.cell(0)), inside, row.line());
    }

    /** By the column's type; without one, by a cell that has letters and is neither a truth nor "not". */
    private boolean holdsWords(int column) {
        return headCell("type", column).map("string"::equals).orElseGet(() -> rules.stream()
                .map(row -> row.cell(column).replaceAll("\\b(true|false|not|null)\\b", ""))
                .anyMatch(cell -> cell.chars().anyMatch(Character::isLetter)));
    }

    /** Words in a spreadsheet stand without quotation marks: {@code dry, pools} is {@code "dry","pools"}. */
    private static String quoted(String cell) {
        if (cell.isEmpty() || cell.equals("-") || cell.contains("\"")) {
            return cell;
        }
        if (cell.startsWith("not(") && cell.endsWith(")")) {
            return "not(" + quoted(cell.substring(4, cell.length() - 1)) + ")";
        }
        List<String> words = new ArrayList<>();
        for (String word : cell.split(",", -1)) {
            words.add(literal(word.strip()));
        }
        return String.join(",", words);
    }

    private static String literal(String cell) {
        boolean plain = cell.isEmpty()
                || cell.equals("-")
                || cell.equals("null")
                || cell.contains("\"")
                || Literals.one(cell).isPresent();
        return plain ? cell : '"' + cell.replace("\\", "\\\\") + '"';
    }

    private Optional<String> headCell(String row, int column) {
        return Optional.ofNullable(head.get(row))
                .map(cells -> cells.cell(column))
                .filter(cell -> !cell.isEmpty());
    }

    private static XmlElement entry(String name, String text, int line) {
        return element(name, Map.of(), List.of(text(text, line)), line);
    }

    private static XmlElement text(String text, int line) {
        return new XmlElement("text", "", Map.of(), text, List.of(), line);
    }

    private static XmlElement element(String name, Map<String, String> attributes, List<XmlElement> inside, int line) {
        return new XmlElement(name, "", attributes, "", List.copyOf(inside), line);
    }
}
