package org.wadeplan.hazards.limits;

import java.util.OptionalDouble;
import java.util.function.Function;

/** What a formula gives: a number, or the reason why it cannot give one. The unit is in the name of the method asked. */
public sealed interface Estimate {

    /**
     * The formula covers the inputs.
     *
     * @param number in the unit named by the method that gave it
     */
    record Known(double number) implements Estimate {}

    /**
     * The inputs lie outside what the formula covers.
     *
     * @param reason a sentence that names the input, what was found and the span that the formula covers
     */
    record Refused(String reason) implements Estimate {}

    static Estimate known(double value) {
        return new Known(value);
    }

    static Estimate refused(String reason) {
        return new Refused(reason);
    }

    default <R> R fold(Function<Known, R> known, Function<Refused, R> refused) {
        return this instanceof Known value ? known.apply(value) : refused.apply((Refused) this);
    }

    /** The number, or empty where the formula refused. */
    default OptionalDouble value() {
        return fold(known -> OptionalDouble.of(known.number()), refused -> OptionalDouble.empty());
    }

    default Estimate map(Function<Double, Double> change) {
        return fold(known -> known(change.apply(known.number())), refused -> refused);
    }
}
