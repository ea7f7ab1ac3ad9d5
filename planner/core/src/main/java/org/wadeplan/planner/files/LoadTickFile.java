package org.wadeplan.planner.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.files.CsvText.Line;
import org.wadeplan.planner.round.LoadTick;

/**
 * Writes ticks into {@code load_ticks.csv} of a round folder. The file is replaced whole; every row that stood there stays,
 * in its order, with columns of its own. Two programs on one machine take turns; between machines nothing guards a shared
 * folder.
 */
public final class LoadTickFile {

    private static final List<String> COLUMNS =
            List.of("date", "crew", "item", "ticked_at", "by", "override_by", "override_reason");
    private static final Object IN_THIS_PROGRAM = new Object();

    private LoadTickFile() {}

    /** Adds a tick as the last row. */
    public static void add(Path roundFolder, LoadTick tick) throws DiskException {
        change(roundFolder, rows -> rows.add(cells(tick)));
    }

    /** Takes the tick of that crew-day and item out; the file stays as it is where there is none. */
    public static void remove(Path roundFolder, LoadTick tick) throws DiskException {
        change(
                roundFolder,
                rows -> rows.removeIf(
                        row -> row.getOrDefault("date", "").equals(tick.date().toString())
                                && row.getOrDefault("crew", "").equalsIgnoreCase(tick.crew())
                                && row.getOrDefault("item", "").equalsIgnoreCase(tick.item())));
    }

    private interface RowChange {
        void apply(List<Map<String, String>> rows);
    }

    private static void change(Path roundFolder, RowChange change) throws DiskException {
        Map<String, String> names =
                RoundJson.read(roundFolder).value().map(RoundJson::files).orElse(Map.of());
        Path file = new RoundFolder(roundFolder, names).path("load_ticks").toAbsolutePath();
        synchronized (IN_THIS_PROGRAM) {
            Path guard = Path.of(System.getProperty("java.io.tmpdir"))
                    .resolve("wadeplan-" + Integer.toHexString(file.normalize().hashCode()) + ".lock");
            try (FileChannel channel = FileChannel.open(guard, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = channel.lock()) {
                if (held.isValid()) {
                    rewrite(file, change);
                }
            } catch (IOException refused) {
                throw new DiskException(
                        file, "its turn could not be waited for", "check the folder for temporary files", refused);
            }
        }
    }

    private static void rewrite(Path file, RowChange change) throws DiskException {
        String text = text(file);
        List<Line> lines = text.isBlank() ? List.of() : parsed(file, text).lines();
        char separator = text.isBlank() ? ',' : parsed(file, text).separator();
        List<String> header =
                new ArrayList<>(lines.isEmpty() ? COLUMNS : lines.get(0).cells());
        COLUMNS.stream().filter(column -> !header.contains(column)).forEach(header::add);
        List<Map<String, String>> rows = new ArrayList<>();
        lines.stream().skip(1).forEach(line -> rows.add(cells(header, line)));
        change.apply(rows);
        StringBuilder out = new StringBuilder(joined(header, separator));
        rows.forEach(row -> out.append(joined(
                header.stream().map(column -> row.getOrDefault(column, "")).toList(), separator)));
        WholeFile.write(file, out.toString());
    }

    private static CsvText parsed(Path file, String text) throws DiskException {
        return CsvText.parse(text, String.valueOf(file.getFileName()))
                .value()
                .orElseThrow(() -> new DiskException(
                        file,
                        "its rows can't be told apart, so nothing was written",
                        "mend its quotes first",
                        new IOException("csv")));
    }

    private static String text(Path file) throws DiskException {
        try {
            String text = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (IOException refused) {
            throw new DiskException(file, "can't be read as UTF-8 text", "check its rights and its encoding", refused);
        }
    }

    private static Map<String, String> cells(List<String> header, Line line) {
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < Math.min(header.size(), line.cells().size()); i++) {
            row.put(header.get(i), line.cells().get(i));
        }
        return row;
    }

    private static Map<String, String> cells(LoadTick tick) {
        Map<String, String> row = new HashMap<>();
        row.put("date", tick.date().toString());
        row.put("crew", tick.crew());
        row.put("item", tick.item());
        row.put("ticked_at", tick.tickedAt().truncatedTo(ChronoUnit.SECONDS).toString());
        row.put("by", onOneLine(tick.by()));
        row.put("override_by", onOneLine(tick.overrideBy().orElse("")));
        row.put("override_reason", onOneLine(tick.overrideReason().orElse("")));
        return row;
    }

    /** Letters that cannot be printed would make the file unreadable to ourselves. */
    private static String onOneLine(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    }

    private static String joined(List<String> cells, char separator) {
        return cells.stream().map(cell -> quoted(cell, separator)).collect(Collectors.joining("" + separator)) + "\n";
    }

    private static String quoted(String cell, char separator) {
        boolean plain = cell.indexOf(separator) < 0
                && cell.indexOf('"') < 0
                && cell.indexOf('\n') < 0
                && cell.indexOf('\r') < 0;
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
