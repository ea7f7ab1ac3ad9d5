package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * A table that the folder may hold: its name, its columns, and how one of its rows becomes a record.
 *
 * @param stem name of its file without the ending
 * @param mayBeAbsent true where a round can do without it
 * @param naming columns whose cells name a row for people
 * @param required columns that may not be blank
 * @param optional columns that may be blank, which means not known
 * @param later those of them that came later: a table without them is as whole as it ever was
 * @param maker makes the record; what it makes of a row that is not whole is thrown away
 */
record TableKind<T>(
        String stem,
        boolean mayBeAbsent,
        List<String> naming,
        List<String> required,
        List<String> optional,
        List<String> later,
        Function<Row, T> maker) {

    /** @param naming names of the columns, parted by spaces, as all lists of columns here */
    static Columns named(String stem, String naming) {
        return new Columns(stem, false, parts(naming), List.of(), List.of(), List.of());
    }

    private static List<String> parts(String columns) {
        return Arrays.stream(columns.split(" ")).filter(name -> !name.isEmpty()).toList();
    }

    List<String> columns() {
        List<String> all = new ArrayList<>(required);
        all.addAll(optional);
        all.addAll(later);
        return all;
    }

    /** A table whose rows have no meaning yet. */
    record Columns(
            String stem,
            boolean mayBeAbsent,
            List<String> naming,
            List<String> required,
            List<String> optional,
            List<String> later) {

        Columns required(String columns) {
            return new Columns(stem, mayBeAbsent, naming, parts(columns), optional, later);
        }

        Columns optional(String columns) {
            return new Columns(stem, mayBeAbsent, naming, required, parts(columns), later);
        }

        /** Further optional columns, which tables written before them lack. */
        Columns later(String columns) {
            return new Columns(stem, mayBeAbsent, naming, required, optional, parts(columns));
        }

        Columns mayAllBeAbsent() {
            return new Columns(stem, true, naming, required, optional, later);
        }

        <T> TableKind<T> makes(Function<Row, T> maker) {
            return new TableKind<>(stem, mayBeAbsent, naming, required, optional, later, maker);
        }
    }
}
