package org.wadeplan.planner.files;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Parts CSV text into cells, quoting by RFC 4180, with the line on which each row starts.
 *
 * @param separator what parts the cells
 * @param lines rows that are not blank, the header among them
 */
record CsvText(char separator, List<Line> lines) {

    /** @param number line of the file, counted from 1 */
    record Line(int number, List<String> cells) {

        boolean blank() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    /** Cells lose the spaces around them. A quote that never closes is an error with its line. */
    static Checked<CsvText> parse(String text, String file) {
        char separator = separator(text);
        List<Line> lines = new ArrayList<>();
        try (CsvParser parser = FACTORY.createParser(text)) {
            parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
            readAll(parser, lines);
            return Checked.of(new CsvText(separator, lines));
        } catch (JsonProcessingException broken) {
            return Checked.failed(quoting(file, lines, broken));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static final CsvFactory FACTORY = CsvFactory.builder()
            .enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private static void readAll(CsvParser parser, List<Line> lines) throws IOException {
        List<String> cells = new ArrayList<>();
        int number = 0;
        for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
            if (token == JsonToken.VALUE_STRING) {
                number = cells.isEmpty() ? lineNumber(parser) : number;
                cells.add(parser.getText().strip());
            } else if (token == JsonToken.END_ARRAY && !cells.isEmpty()) {
                Line line = new Line(number, List.copyOf(cells));
                if (!line.blank()) {
                    lines.add(line);
                }
                cells.clear();
            }
        }
    }

    private static int lineNumber(JsonParser parser) {
        return parser.currentTokenLocation().getLineNr();
    }

    private static Problem quoting(String file, List<Line> before, JsonProcessingException broken) {
        int afterLine = before.isEmpty() ? 0 : before.get(before.size() - 1).number();
        boolean unclosed = broken.getOriginalMessage().contains("closing quote");
        int line = unclosed ? afterLine + 1 : broken.getLocation().getLineNr();
        return Problem.error(
                "csv-quoting",
                SourcePlace.line(file, line),
                unclosed
                        ? "a quote is opened in the row that starts here and never closed"
                        : "there is text between a closing quote and the next separator",
                "quotes in pairs around a whole cell, and a quote inside a cell doubled",
                "mend the quotes; nothing after this row could be read");
    }

    /** Whichever of comma and semicolon the first line has more of outside quotes; a comma where it has neither. */
    private static char separator(String text) {
        int commas = 0;
        int semicolons = 0;
        boolean quoted = false;
        for (char letter : text.stripLeading().lines().findFirst().orElse("").toCharArray()) {
            quoted ^= letter == '"';
            commas += !quoted && letter == ',' ? 1 : 0;
            semicolons += !quoted && letter == ';' ? 1 : 0;
        }
        return semicolons > commas ? ';' : ',';
    }
}
