package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rows of text in aligned columns, as a terminal shows them. A long cell is broken between words and goes on below
 * itself; the last column gets what the others leave of a line.
 */
final class TextTable {

    private static final String GAP = "  ";
    private static final int LINE_WIDTH = 120;
    private static final int CELL_WIDTH = 46;
    private static final int LAST_CELL_MIN_WIDTH = 24;

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

    /** The rows' lines, without trailing blanks; the headings alone where there are no rows. */
    List<String> lines() {
        int last = rows.get(0).size() - 1;
        int[] widths = new int[last + 1];
        int taken = 0;
        for (int i = 0; i < last; i++) {
            widths[i] = columnWidth(i);
            taken += widths[i] + GAP.length();
        }
        widths[last] = Math.max(LAST_CELL_MIN_WIDTH, LINE_WIDTH - taken);
        return rows.stream().flatMap(row -> lines(row, widths).stream()).toList();
    }

    /** The text in lines of at most that width, broken between words; a longer word stays whole. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split(" +", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** {@code mark}, then the text, broken so that its further lines stand below its first one. */
    static List<String> hanging(String mark, String text) {
        List<String> lines = wrapped(text, LINE_WIDTH - mark.length());
        List<String> hung = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            hung.add((i == 0 ? mark : " ".repeat(mark.length())) + lines.get(i));
        }
        return hung;
    }

    private int columnWidth(int column) {
        return rows.stream()
                .flatMap(row -> wrapped(row.get(column), CELL_WIDTH).stream())
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    private static List<String> lines(List<String> row, int[] widths) {
        List<List<String>> cells = new ArrayList<>();
        int last = widths.length - 1;
        for (int i = 0; i < widths.length; i++) {
            cells.add(wrapped(row.get(i), i < last ? CELL_WIDTH : widths[i]));
        }
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            int at = line;
            List<String> parts = cells.stream()
                    .map(cell -> at < cell.size() ? cell.get(at) : "")
                    .collect(Collectors.toList());
            lines.add(line(parts, widths));
        }
        return lines;
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = row.get(i);
            line.append(cell);
            if (i < widths.length - 1) {
                line.append(" ".repeat(Math.max(0, widths[i] - cell.length()))).append(GAP);
            }
        }
        return line.toString().stripTrailing();
    }
}
