package org.wadeplan.geo.problem;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where in the round folder a problem stands.
 *
 * @param file name of the file relative to the round folder, never blank
 * @param line line in a text file, counted from 1 and including the header line; empty where lines mean nothing
 * @param row what the person calls the row: a site code, a feature, a rule number
 * @param column column or attribute name
 */
public record SourcePlace(String file, OptionalInt line, Optional<String> row, Optional<String> column) {

    public SourcePlace {
        if (file.isBlank()) {
            throw new IllegalArgumentException("A place needs the name of its file");
        }
    }

    public static SourcePlace file(String file) {
        return new SourcePlace(file, OptionalInt.empty(), Optional.empty(), Optional.empty());
    }

    /** A feature, a rule or another named part of a file that has no lines. */
    public static SourcePlace part(String file, String row) {
        return new SourcePlace(file, OptionalInt.empty(), Optional.of(row), Optional.empty());
    }

    public static SourcePlace line(String file, int line) {
        return new SourcePlace(file, OptionalInt.of(line), Optional.empty(), Optional.empty());
    }

    public SourcePlace row(String name) {
        return new SourcePlace(file, line, name.isBlank() ? Optional.empty() : Optional.of(name), column);
    }

    public SourcePlace column(String name) {
        return new SourcePlace(file, line, row, Optional.of(name));
    }

    /** {@code sites.csv, line 4 (KX-12), column depth_max_m} */
    @Override
    public String toString() {
        StringBuilder words = new StringBuilder(file);
        line.ifPresent(number -> words.append(", line ").append(number));
        row.ifPresent(name -> words.append(line.isPresent() ? " (" + name + ")" : ", " + name));
        column.ifPresent(name -> words.append(", column ").append(name));
        return words.toString();
    }
}
