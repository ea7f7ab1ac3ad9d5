package org.wadeplan.planner.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
 * @param raw every row, broken ones too, so that a broken cell does not make an id unknown
 * @param rows the rows that gave a record, in the file's order
 * @param problems everything found in it
 */
record Table<T>(String file, boolean complete, List<Row> raw, List<Placed<T>> rows, List<Problem> problems) {

    /** A record and where it stands. */
    record Placed<T>(T value, SourcePlace place) {}

    static <T> Table<T> read(RoundFolder folder, TableKind<T> kind) {
        String file = folder.nameOf(kind.stem());
        if (kind.mayBeAbsent() && !folder.has(kind.stem())) {
            return new Table<>(file, true, List.of(), List.of(), List.of());
        }
        Path path = folder.path(kind.stem());
        Checked<CsvTable> checked = CsvTable.read(path, file, kind);
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
                raw,
                List.copyOf(rows),
                List.copyOf(problems));
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
