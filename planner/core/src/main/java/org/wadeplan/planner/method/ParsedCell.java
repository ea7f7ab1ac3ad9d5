package org.wadeplan.planner.method;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What came of reading a cell. */
public sealed interface ParsedCell {

    /**
     * It was read.
     *
     * @param doubts readings that the standard prescribes and the author may not have meant
     */
    record Read(UnaryTest test, List<CellFault> doubts) implements ParsedCell {}

    /** It was not. */
    record Refused(CellFault fault) implements ParsedCell {}

    default <R> R fold(BiFunction<UnaryTest, List<CellFault>, R> read, Function<CellFault, R> refused) {
        if (this instanceof Read it) {
            return read.apply(it.test(), it.doubts());
        }
        return refused.apply(((Refused) this).fault());
    }
}
