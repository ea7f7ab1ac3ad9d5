package org.wadeplan.geo.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table of check values: comma-separated, the first line names the columns, the last column is the source and may hold
 * commas. A row without a source is refused.
 */
public final class ReferenceTable {

    private ReferenceTable() {}

    /** One row, by column. */
    public record Row(Map<String, String> cells) {

        public String text(String column) {
            return Optional.ofNullable(cells.get(column))
                    .orElseThrow(() -> new AssertionError("There is no column " + column + " in " + cells));
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return cells.values().iterator().next();
        }
    }

    /** All rows of {@code reference/NAME}. */
    public static List<Row> rows(String name) {
        List<String> lines = read(name).lines().filter(line -> !line.isBlank()).toList();
        String[] columns = lines.get(0).split(",", -1);
        if (!columns[columns.length - 1].equals("source")) {
            throw new AssertionError(name + " needs source as its last column");
        }
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", columns.length);
            if (cells.length < columns.length || cells[columns.length - 1].isBlank()) {
                throw new AssertionError(name + " has a row without a source: " + line);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < columns.length; i++) {
                row.put(columns[i], cells[i].strip());
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    private static String read(String name) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
            if (in == null) {
                throw new AssertionError("There is no reference/" + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
