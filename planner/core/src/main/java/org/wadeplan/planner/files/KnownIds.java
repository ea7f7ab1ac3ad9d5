package org.wadeplan.planner.files;

import static org.wadeplan.planner.files.NumberCell.quoted;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;

/**
 * The ids that something can be called by, to hold the cells against that refer to it.
 *
 * @param what one of them in words, with the file they stand in: {@code a site of sites.csv}
 * @param ids empty where they cannot be known, because their file is broken: then nothing is said
 */
record KnownIds(String what, Optional<Set<String>> ids) {

    static KnownIds of(String what, Table<?> table, String column) {
        return new KnownIds(
                what + " of " + table.file(), table.complete() ? Optional.of(table.names(column)) : Optional.empty());
    }

    KnownIds and(String words, Set<String> more) {
        return new KnownIds(what + words, ids.map(known -> {
            Set<String> all = new LinkedHashSet<>(more);
            all.addAll(known);
            return all;
        }));
    }

    /** Either of two kinds of thing; nothing is said where one of them cannot be known. */
    KnownIds and(KnownIds other) {
        return other.ids.isEmpty()
                ? new KnownIds(what + ", or " + other.what, Optional.empty())
                : and(", or " + other.what, other.ids.get());
    }

    /** Every cell of a column that names none of the ids; cells with lists are taken apart. */
    List<Problem> check(Severity severity, Table<?> table, String column) {
        List<Problem> problems = new ArrayList<>();
        for (Row row : table.raw()) {
            for (String name : row.raw(column).split(";", -1)) {
                problem(severity, row, column, name.strip()).ifPresent(problems::add);
            }
        }
        return problems;
    }

    private Optional<Problem> problem(Severity severity, Row row, String column, String name) {
        if (name.isEmpty() || ids.isEmpty() || ids.get().contains(name)) {
            return Optional.empty();
        }
        Optional<String> nearest = NearestWord.of(name, ids.get());
        return Optional.of(new Problem(
                severity,
                "unknown-code",
                row.place().column(column),
                quoted(name) + " is not known"
                        + nearest.map(known -> "; nearest is " + known).orElse(""),
                what + some(ids.get()),
                nearest.map(known -> "write " + known + " if that is meant").orElse("add it there, or mend it here")));
    }

    /** A short list whole, a long one not at all. */
    private static String some(Set<String> ids) {
        return ids.isEmpty() ? ", which has none" : ids.size() <= 8 ? ": " + String.join(", ", ids) : "";
    }

    static KnownIds named(String what, String... ids) {
        return new KnownIds(what, Optional.of(new LinkedHashSet<>(Arrays.asList(ids))));
    }
}
