package org.wadeplan.planner.files;

import java.util.List;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;

/** {@code methods.csv}: the methods that the decision table may name; their parts stand in another table. */
final class MethodTable {

    static final TableKind<Method> KIND = TableKind.named("methods", "method")
            .required("method label kind source")
            .makes(MethodTable::method);

    private static final Words<MethodKind> KINDS = Words.of(MethodKind.class, MethodTable::word);

    private MethodTable() {}

    private static Method method(Row row) {
        return new Method(
                row.text("method"), row.text("label"), row.word("kind", KINDS), List.of(), row.text("source"));
    }

    private static String word(MethodKind kind) {
        return switch (kind) {
            case ELECTROFISHING -> "electrofishing";
            case NETTING -> "netting";
            case SPOTLIGHTING -> "spotlighting";
            case DRY_RECORD -> "dry-record";
            case NONE -> "none";
        };
    }
}
