package org.wadeplan.planner.files;

import java.util.Optional;

/**
 * What came of reading one cell: a value, or what is wrong with it.
 *
 * @param value present where {@code fault} is empty
 * @param fault present where {@code value} is empty
 */
record Reading<T>(Optional<T> value, Optional<Fault> fault) {

    static <T> Reading<T> of(T value) {
        return new Reading<>(Optional.of(value), Optional.empty());
    }

    static <T> Reading<T> fault(String code, String found, String expected, String remedy) {
        return new Reading<>(Optional.empty(), Optional.of(new Fault(code, found, expected, remedy)));
    }
}
