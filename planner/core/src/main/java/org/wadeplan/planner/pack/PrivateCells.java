package org.wadeplan.planner.pack;

import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Phones and landholders of a round's private tables, read only to keep them out: nothing else in the program opens those
 * files, and no value of theirs leaves this class. A round without private files has no cells.
 */
final class PrivateCells {

    private static final Set<String> COLUMNS = Set.of("phone", "holder");
    private static final int SHORTEST = 4;
    private static final ObjectReader READER =
            new CsvMapper().enable(CsvParser.Feature.WRAP_AS_ARRAY).readerForListOf(String.class);

    /** A cell to keep out, with the pattern of its value. */
    private record Cell(SourcePlace place, Pattern value) {}

    private final List<Cell> cells;

    private PrivateCells(List<Cell> cells) {
        this.cells = cells;
    }

    /**
     * @param publicNames names that the pack must print, such as those of sites; a holder after whom one is called is not
     *     looked for
     * @throws DiskException where a private file is there and cannot be read: then nothing can be promised
     */
    static PrivateCells of(Path round, List<String> publicNames) throws DiskException {
        List<Cell> cells = new ArrayList<>();
        if (Files.isDirectory(round)) {
            for (Path file : privateFiles(round)) {
                cells.addAll(cells(file, publicNames));
            }
        }
        return new PrivateCells(List.copyOf(cells));
    }

    /** How many cells are looked for. */
    int count() {
        return cells.size();
    }

    /** A problem for each cell whose value stands in the text: it names the cell and the file, never the value. */
    List<Problem> foundIn(String file, String text) {
        return cells.stream()
                .filter(cell -> cell.value().matcher(text).find())
                .map(cell -> Problem.error(
                        "private-in-pack",
                        cell.place(),
                        "its value stands in " + file + ", so no pack was written",
                        "phones and landholders in the private files only",
                        "find it in the round's public tables, most likely in a note, and take it out there"))
                .toList();
    }

    private static List<Path> privateFiles(Path round) throws DiskException {
        try (Stream<Path> files = Files.list(round)) {
            return files.filter(file -> file.getFileName().toString().endsWith("_private.csv"))
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw unreadable(round, failure);
        }
    }

    private static List<Cell> cells(Path file, List<String> publicNames) throws DiskException {
        List<List<String>> rows = rows(file);
        List<Cell> cells = new ArrayList<>();
        for (int row = 1; row < rows.size(); row++) {
            List<String> header = rows.get(0);
            for (int column = 0; column < Math.min(header.size(), rows.get(row).size()); column++) {
                String name = header.get(column).strip().toLowerCase(Locale.ROOT);
                String value = rows.get(row).get(column).strip();
                boolean printed =
                        name.equals("holder") && publicNames.stream().anyMatch(known -> known.contains(value));
                if (COLUMNS.contains(name) && value.length() >= SHORTEST && !printed) {
                    SourcePlace place = SourcePlace.line(file.getFileName().toString(), row + 1);
                    cells.add(new Cell(place.column(name), pattern(value)));
                }
            }
        }
        return cells;
    }

    private static List<List<String>> rows(Path file) throws DiskException {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8).replace("\uFEFF", "");
            String header = text.lines().findFirst().orElse("");
            CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(header.contains(";") ? ';' : ',');
            return READER.with(schema).<List<String>>readValues(text).readAll();
        } catch (IOException failure) {
            throw unreadable(file, failure);
        }
    }

    /** Whole words in any case; a page may break a line at a space or a hyphen. */
    private static Pattern pattern(String value) {
        String signs = value.codePoints()
                .mapToObj(sign -> Character.isWhitespace(sign) ? "\\s" : Pattern.quote(Character.toString(sign)))
                .collect(Collectors.joining("\\s*"));
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])(?<!\\d\\.)" + signs.replace("\\s*\\s\\s*", "\\s+") + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static DiskException unreadable(Path path, IOException cause) {
        return new DiskException(
                path,
                "the private table cannot be read, so nobody can check that its values stay out of the pack",
                "mend the table, or take it out of the round folder",
                cause);
    }
}
