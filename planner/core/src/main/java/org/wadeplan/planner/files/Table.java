package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * A table with its rows turned into records.
 *
 * @param file name of the file relative to the round folder
 * @param complete false where the file is missing or its header broken: then its ids are not known, and no id that
 *     stands elsewhere can be called wrong because of it; true where a round can do without it and does
 * @param shipped true where the folder has no such table and the one that comes with the program stands in
 * @param raw every row, broken ones too, so that a broken cell does not make an id unknown
 * @param rows the rows that gave a record, in the file's order
 * @param problems everything found in it
 */
record Table<T>(
        String file, boolean complete, boolean shipped, List<Row> raw, List<Placed<T>> rows, List<Problem> problems) {

    /** A record and where it stands. */
    record Placed<T>(T value, SourcePlace place) {}

    static <T> Table<T> read(RoundFolder folder, TableKind<T> kind) {
        String file = folder.nameOf(kind.stem());
        if (kind.mayBeAbsent() && !folder.has(kind.stem())) {
            return new Table<>(file, true, false, List.of(), List.of(), List.of());
        }
        return of(CsvTable.read(folder.path(kind.stem()), file, kind), file, kind, false);
    }

    /** The folder's own table, which replaces the one that comes with the program whole; that one where it has none. */
    static <T> Table<T> readOrShipped(RoundFolder folder, TableKind<T> kind) {
        return folder.wants(kind.stem()) ? read(folder, kind) : ShippedTables.table(kind);
    }

    static <T> Table<T> of(Checked<CsvTable> checked, String file, TableKind<T> kind, boolean shipped) {
        List<Problem> problems = new ArrayList<>(checked.problems());
        List<Placed<T>> rows = new ArrayList<>();
        List<Row> raw = checked.value().map(CsvTable::rows).orElse(List.of());
        for (Row row : raw) {
            T made = kind.maker().apply(row);
            if (row.whole()) {
                rows.add(new Placed<>(made, row.place()));
            }
        }
        checked.value().ifPresent(csv -> problems.addAll(csv.found()));
        return new Table<>(
                file,
                checked.value().map(CsvTable::headerWhole).orElse(false),
                shipped,
                raw,
                List.copyOf(rows),
                List.copyOf(problems));
    }

    /** The same with only some of its rows. */
    Table<T> only(Predicate<Row> wanted) {
        return new Table<>(file, complete, shipped, raw.stream().filter(wanted).toList(), rows, problems);
    }

    /** Whether the header and every row could be read, so that a record that is not here is nowhere. */
    boolean whole() {
        return complete && rows.size() == raw.size();
    }

    List<T> values() {
        return rows.stream().map(Placed::value).toList();
    }

    /** Every word that stands in a column, once, in the file's order. */
    Set<String> names(String column) {
        return raw.stream()
                .map(row -> row.raw(column))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
