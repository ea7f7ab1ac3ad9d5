package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads a table of expected values; a row without a source fails every test that uses it. */
final class ReferenceRows {

    private ReferenceRows() {}

    static List<Map<String, String>> of(String file) {
        try (InputStream in = Objects.requireNonNull(
                        ReferenceRows.class.getResourceAsStream("/reference/decon/" + file), file);
                MappingIterator<Map<String, String>> lines = new CsvMapper()
                        .readerForMapOf(String.class)
                        .with(CsvSchema.emptySchema().withHeader())
                        .readValues(in)) {
            List<Map<String, String>> rows = lines.readAll();
            assertThat(rows).isNotEmpty().allSatisfy(row -> assertThat(row.get("source"))
                    .isNotBlank());
            return rows;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(text(row, column));
    }
}
