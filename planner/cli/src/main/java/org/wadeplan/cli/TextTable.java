package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in aligned columns, as a terminal shows them. The last column runs free. */
final class TextTable {

    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... headings) {
        rows.add(List.of(headings));
    }

    TextTable row(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException("A row needs " + rows.get(0).size() + " cells, not " + cells.length);
        }
        rows.add(List.of(cells));
        return this;
    }

    /** One line a row, without trailing blanks; the headings alone where there are no rows. */
    List<String> lines() {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = row.get(i);
            line.append(cell);
            if (i < widths.length - 1) {
                line.append(" ".repeat(widths[i] - cell.length())).append(GAP);
            }
        }
        return line.toString().stripTrailing();
    }
}
