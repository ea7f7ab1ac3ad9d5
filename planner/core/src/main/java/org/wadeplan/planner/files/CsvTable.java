package org.wadeplan.planner.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * A CSV file read against the columns that it should have, with every problem of its form.
 *
 * <p>Column names are the same in upper and lower case. Rows keep the number of their line. A row with the wrong number
 * of cells is reported and left out, because its cells cannot be told apart.
 *
 * @param file name of the file relative to the round folder
 * @param headerWhole false where a required column is missing or a column stands there twice
 * @param rows in the file's order; their cells report to {@code found}
 * @param found grows while the rows are read
 */
record CsvTable(String file, boolean headerWhole, List<Row> rows, List<Problem> found) {

    static Checked<CsvTable> read(Path path, String file, TableKind<?> kind) {
        return TextFile.read(path, file)
                .then(text -> CsvText.parse(text, file))
                .then(text -> new HeaderAndRows(file, text, kind).table());
    }

    static Checked<CsvTable> of(String content, String file, TableKind<?> kind) {
        return CsvText.parse(content, file).then(text -> new HeaderAndRows(file, text, kind).table());
    }

    /** Matches the header with the columns wanted, then the cells with the header. */
    private record HeaderAndRows(String file, CsvText text, TableKind<?> kind) {

        Checked<CsvTable> table() {
            if (text.lines().isEmpty()) {
                return Checked.failed(
                        error("table-empty", 1, "the file has no header and no rows", header(), "fill it"));
            }
            CsvText.Line header = text.lines().get(0);
            List<String> names = header.cells().stream()
                    .map(name -> name.toLowerCase(Locale.ROOT))
                    .toList();
            List<Problem> problems = new ArrayList<>(headerProblems(header.number(), names));
            if (text.separator() == ';') {
                problems.add(semicolon());
            }
            boolean headerWhole = problems.stream().noneMatch(problem -> problem.severity() == Severity.ERROR);
            List<Row> rows = new ArrayList<>();
            List<Problem> found = new ArrayList<>();
            text.lines().stream().skip(1).forEach(line -> row(line, names, problems, found)
                    .ifPresent(rows::add));
            return Checked.of(new CsvTable(file, headerWhole, rows, found), problems);
        }

        private String header() {
            return "a header with the columns " + String.join(", ", kind.required());
        }

        private Problem semicolon() {
            return Problem.note(
                    "separator-semicolon",
                    SourcePlace.file(file),
                    "cells are parted by semicolons, so lists inside a cell need quotes around them",
                    "comma or semicolon",
                    "");
        }

        private List<Problem> headerProblems(int line, List<String> names) {
            List<Problem> problems = new ArrayList<>();
            List<String> missing = kind.required().stream()
                    .filter(name -> !names.contains(name))
                    .toList();
            if (!missing.isEmpty()) {
                problems.add(error("column-missing", line, missingWords(missing), header(), missingRemedy(names)));
            }
            names.stream()
                    .filter(name -> !name.isEmpty())
                    .collect(Collectors.groupingBy(name -> name, LinkedHashMap::new, Collectors.counting()))
                    .forEach((name, count) -> {
                        if (count > 1) {
                            problems.add(twice(line, name, count));
                        }
                    });
            names.stream()
                    .distinct()
                    .filter(name -> !kind.columns().contains(name))
                    .forEach(name -> {
                        problems.add(unknown(line, name, names));
                    });
            List<String> absent = kind.optional().stream()
                    .filter(name -> !names.contains(name))
                    .toList();
            if (!absent.isEmpty()) {
                problems.add(absent(line, absent));
            }
            return problems;
        }

        private static String missingWords(List<String> missing) {
            String columns = String.join(", ", missing);
            return missing.size() == 1 ? "there is no column " + columns : "there are no columns " + columns;
        }

        private static String missingRemedy(List<String> names) {
            return names.size() == 1
                    ? "add them, or check that comma or semicolon parts the cells"
                    : "add what is missing, or mend the spelling in the first line";
        }

        private Problem twice(int line, String name, long count) {
            return error(
                    "column-twice",
                    line,
                    "the column " + name + " stands there " + count + " times",
                    "each column once",
                    "delete or rename all but one");
        }

        private Problem unknown(int line, String name, List<String> names) {
            List<String> unused = kind.columns().stream()
                    .filter(known -> !names.contains(known))
                    .toList();
            Optional<String> nearest = NearestWord.of(name, unused);
            return Problem.note(
                    "column-unknown",
                    SourcePlace.line(file, line),
                    (name.isEmpty() ? "a column without a name" : "the column " + name)
                            + " is not known here and not read",
                    "",
                    nearest.map(known -> "if " + known + " is meant, rename it").orElse(""));
        }

        private Problem absent(int line, List<String> absent) {
            return Problem.warning(
                    "column-absent",
                    SourcePlace.line(file, line),
                    missingWords(absent) + "; everything they would say counts as not known",
                    "all columns of the table, blank where a value is not known",
                    "add them");
        }

        private Optional<Row> row(CsvText.Line line, List<String> names, List<Problem> problems, List<Problem> found) {
            int cells = line.cells().size();
            boolean surplusIsBlank = line.cells().stream().skip(names.size()).allMatch(String::isEmpty);
            if (cells < names.size() || !surplusIsBlank) {
                problems.add(error(
                        cells < names.size() ? "cells-too-few" : "cells-too-many",
                        line.number(),
                        "the row has " + cells + " cells and the header " + names.size(),
                        "as many cells as the header",
                        cells < names.size()
                                ? "add the blank cells that are missing"
                                : "put quotes around a cell that holds a "
                                        + (text.separator() == ';' ? "semicolon" : "comma")
                                        + ", and write decimals with a point"));
                return Optional.empty();
            }
            Map<String, String> byName = new LinkedHashMap<>();
            for (int i = 0; i < names.size(); i++) {
                byName.putIfAbsent(names.get(i), line.cells().get(i));
            }
            String called = kind.naming().stream()
                    .map(name -> byName.getOrDefault(name, ""))
                    .filter(name -> !name.isEmpty())
                    .collect(Collectors.joining(" "));
            return Optional.of(new Row(SourcePlace.line(file, line.number()).row(called), byName, found));
        }

        private Problem error(String code, int line, String what, String expected, String remedy) {
            return Problem.error(code, SourcePlace.line(file, line), what, expected, remedy);
        }
    }
}
