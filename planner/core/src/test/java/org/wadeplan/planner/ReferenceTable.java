package org.wadeplan.planner;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/** A table of expected values from outside the project, in {@code src/test/resources/reference}. */
public final class ReferenceTable {

    private ReferenceTable() {}

    /** One row, by column. */
    public record Row(Map<String, String> cells) {

        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), "no column " + column);
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        public OptionalDouble optional(String column) {
            return text(column).isBlank() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
        }

        @Override
        public String toString() {
            return text("id");
        }
    }

    /** Reads a table whose cells hold no comma; the last column is the source and may hold some. Fails where it is empty. */
    public static List<Row> read(String name) {
        List<String> lines = lines(name);
        String[] header = lines.get(0).split(",", -1);
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", header.length);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < header.length; i++) {
                row.put(header[i], cells[i].strip());
            }
            if (!header[header.length - 1].equals("source")
                    || row.getOrDefault("source", "").isBlank()) {
                throw new AssertionError(name + ": a row without a source: " + line);
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    private static List<String> lines(String name) {
        try (InputStream stream = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
            byte[] bytes = Objects.requireNonNull(stream, name).readAllBytes();
            return new String(bytes, StandardCharsets.UTF_8).lines().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
