package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Parts CSV text into rows and cells by RFC 4180, with the line on which each row starts. Comma or semicolon: whichever the first line has more of. */
final class CsvRows {

    /**
     * One row that is not blank.
     *
     * @param line of the file, from 1
     * @param cells without the spaces around them
     */
    record Row(int line, List<String> cells) {

        /** The cell, blank where the row ends before it. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    private final String text;
    private final char separator;
    private final List<Row> rows = new ArrayList<>();
    private int at;
    private int line = 1;

    private CsvRows(String text) {
        this.text = text;
        this.separator = separator(text);
    }

    /** The rows; empty where a quotation mark is never closed. */
    static Optional<List<Row>> read(String text) {
        CsvRows reader = new CsvRows(text.startsWith("\uFEFF") ? text.substring(1) : text);
        return reader.all() ? Optional.of(reader.rows) : Optional.empty();
    }

    private static char separator(String text) {
        String first = text.lines().findFirst().orElse("");
        long semicolons = first.chars().filter(c -> c == ';').count();
        return semicolons > first.chars().filter(c -> c == ',').count() ? ';' : ',';
    }

    private boolean all() {
        while (at < text.length()) {
            int start = line;
            List<String> cells = new ArrayList<>();
            boolean more = true;
            while (more) {
                Optional<String> cell = cell();
                if (cell.isEmpty()) {
                    return false;
                }
                cells.add(cell.get().strip());
                more = at < text.length() && text.charAt(at) == separator;
                at += more ? 1 : 0;
            }
            endOfLine();
            if (!cells.stream().allMatch(String::isEmpty)) {
                rows.add(new Row(start, List.copyOf(cells)));
            }
        }
        return true;
    }

    private Optional<String> cell() {
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (; at < text.length(); at++) {
            char next = text.charAt(at);
            if (next == '"' && (quoted || cell.toString().isBlank())) {
                boolean doubled = quoted && at + 1 < text.length() && text.charAt(at + 1) == '"';
                if (doubled) {
                    cell.append('"');
                    at++;
                } else {
                    quoted = !quoted;
                }
            } else if (!quoted && (next == separator || next == '\n' || next == '\r')) {
                break;
            } else {
                line += next == '\n' ? 1 : 0;
                cell.append(next);
            }
        }
        return quoted ? Optional.empty() : Optional.of(cell.toString());
    }

    private void endOfLine() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
    }
}
