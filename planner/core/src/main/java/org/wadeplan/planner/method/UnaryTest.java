package org.wadeplan.planner.method;

import java.util.SortedSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/** What one cell of a decision table asks of one value: a unary test of DMN. */
public sealed interface UnaryTest {

    /** {@code -}: any value passes, one that is not known too. */
    record Anything() implements UnaryTest {}

    /** Passes the numbers of a set. */
    record Numbers(NumberSet set) implements UnaryTest {}

    /**
     * Passes some texts, or all but some.
     *
     * @param except true where the texts named are the ones that fail
     */
    record Texts(SortedSet<String> texts, boolean except) implements UnaryTest {}

    record Truths(boolean trueAllowed, boolean falseAllowed) implements UnaryTest {}

    /** Whether a known value passes. A value of another type than the test's is a fault in the program. */
    default boolean holds(CaseValue value) {
        return fold(
                () -> true,
                set -> value instanceof CaseValue.Quantity number && set.contains(number.value()),
                (texts, except) -> value instanceof CaseValue.Text text && texts.contains(text.value()) != except,
                truths -> value instanceof CaseValue.Truth truth
                        && (truth.value() ? truths.trueAllowed() : truths.falseAllowed()));
    }

    /** Whether the test passes whatever the value is. */
    default boolean alwaysHolds() {
        return fold(
                () -> true,
                NumberSet::isEverything,
                (texts, except) -> except && texts.isEmpty(),
                truths -> truths.trueAllowed() && truths.falseAllowed());
    }

    default <R> R fold(
            Supplier<R> anything,
            Function<NumberSet, R> numbers,
            BiFunction<SortedSet<String>, Boolean, R> texts,
            Function<Truths, R> truths) {
        if (this instanceof Numbers it) {
            return numbers.apply(it.set());
        }
        if (this instanceof Texts it) {
            return texts.apply(it.texts(), it.except());
        }
        if (this instanceof Truths it) {
            return truths.apply(it);
        }
        return anything.get();
    }
}
