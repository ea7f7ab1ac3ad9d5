package org.wadeplan.geo.terrain;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * The lines at the top of an ESRI ASCII grid: a key and a number each, in any order and any mix of upper and lower case.
 *
 * @param numbers by key in lower case
 * @param firstHeight the first word after the header, which is a height already
 */
record AsciiGridHeader(Map<String, Double> numbers, Optional<String> firstHeight) {

    private static final Set<String> KEYS = Set.of(
            "ncols",
            "nrows",
            "xllcorner",
            "yllcorner",
            "xllcenter",
            "yllcenter",
            "cellsize",
            "dx",
            "dy",
            "nodata_value",
            "nodata");

    private static final long MOST_ROWS = 1_000_000;

    /** Keys that are read until the first word that is none. */
    static Checked<AsciiGridHeader> read(WordStream words, GridFaults faults) throws IOException {
        Map<String, Double> numbers = new TreeMap<>();
        Optional<String> word = words.next();
        while (word.isPresent() && KEYS.contains(word.get().toLowerCase(Locale.ROOT))) {
            String key = word.get().toLowerCase(Locale.ROOT);
            String value = words.next().orElse("");
            Optional<Double> number = number(value);
            if (number.isEmpty()) {
                return Checked.failed(noNumber(faults.place(), words.line(), key, value));
            }
            numbers.put(key, number.get());
            word = words.next();
        }
        AsciiGridHeader header = new AsciiGridHeader(numbers, word);
        List<Problem> missing = header.missing(faults.place());
        return missing.isEmpty() ? Checked.of(header) : Checked.failed(missing);
    }

    static Problem noNumber(SourcePlace place, int line, String where, String found) {
        return Problem.error(
                "not-a-number",
                SourcePlace.line(place.file(), line),
                where + " is \"" + found + "\"",
                "a number with a decimal point",
                found.contains(",") ? "use a point: " + found.replace(',', '.') : "export the grid again");
    }

    static Optional<Double> number(String word) {
        try {
            return Optional.of(Double.parseDouble(word));
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    private List<Problem> missing(SourcePlace place) {
        List<Problem> missing = new ArrayList<>();
        require(missing, place, "ncols");
        require(missing, place, "nrows");
        require(missing, place, "xllcorner", "xllcenter");
        require(missing, place, "yllcorner", "yllcenter");
        if (!numbers.containsKey("dx") || !numbers.containsKey("dy")) {
            require(missing, place, "cellsize");
        }
        if (missing.isEmpty() && !(fits("ncols") && fits("nrows") && width() > 0 && height() > 0)) {
            missing.add(Problem.error(
                    "grid-header-value",
                    place,
                    "the header gives " + numbers.get("ncols") + " columns, " + numbers.get("nrows")
                            + " rows and cells of " + width() + " by " + height(),
                    "whole numbers of columns and rows, 1 or more, and a cell size above 0",
                    "export the grid again"));
        }
        return missing;
    }

    private boolean fits(String key) {
        double count = numbers.getOrDefault(key, 0.0);
        return count >= 1 && count <= MOST_ROWS && count == Math.rint(count);
    }

    private void require(List<Problem> missing, SourcePlace place, String... either) {
        for (String key : either) {
            if (numbers.containsKey(key)) {
                return;
            }
        }
        missing.add(Problem.error(
                "grid-header-missing",
                place,
                "the header has no line " + String.join(" or ", either),
                "lines ncols, nrows, xllcorner, yllcorner, cellsize and NODATA_value before the heights",
                "export the grid again, or put the line back"));
    }

    double width() {
        return numbers.getOrDefault("dx", numbers.getOrDefault("cellsize", 0.0));
    }

    double height() {
        return numbers.getOrDefault("dy", numbers.getOrDefault("cellsize", 0.0));
    }

    OptionalDouble noData() {
        Double stated = numbers.getOrDefault("nodata_value", numbers.get("nodata"));
        return stated == null ? OptionalDouble.empty() : OptionalDouble.of(stated);
    }

    /** Heights come from the northernmost row down, while the header gives the south-west corner. */
    GridFrame frame() {
        int columns = count("ncols");
        int rows = count("nrows");
        double firstX = place("xllcenter", "xllcorner", width());
        double lastY = place("yllcenter", "yllcorner", height());
        return GridFrame.northUp(columns, rows, firstX, lastY + (rows - 1) * height(), width(), height());
    }

    private int count(String key) {
        return numbers.getOrDefault(key, 0.0).intValue();
    }

    private double place(String centre, String corner, double size) {
        Double at = numbers.get(centre);
        return at != null ? at : numbers.getOrDefault(corner, 0.0) + size / 2;
    }
}
