package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads results as tables write them: one text in quotation marks, one number, true or false; or a list of such. */
final class Literals {

    private Literals() {}

    /** The literal without its quotation marks; empty where the text is something else. */
    static Optional<String> one(String text) {
        return list(text).filter(values -> values.size() == 1).map(values -> values.get(0));
    }

    /** Literals parted by commas; empty where one of them is something else. */
    static Optional<List<String>> list(String text) {
        CellScanner scan = new CellScanner(text);
        List<String> values = new ArrayList<>();
        try {
            do {
                values.add(next(scan));
            } while (scan.eat(","));
            return scan.atEnd() ? Optional.of(List.copyOf(values)) : Optional.empty();
        } catch (CellRefusal notLiteral) {
            return Optional.empty();
        }
    }

    private static String next(CellScanner scan) throws CellRefusal {
        if (scan.peek() == '"') {
            return scan.string();
        }
        String name = scan.peekName();
        if (name.equals("true") || name.equals("false")) {
            scan.eat(name);
            return name;
        }
        return CaseValue.plain(scan.number());
    }
}
