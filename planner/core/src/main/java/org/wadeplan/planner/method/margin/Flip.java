package org.wadeplan.planner.method.margin;

import java.util.Optional;

/**
 * The nearest change of one input that gives another outcome.
 *
 * @param words the change, for people: {@code more than +0.06 m}, {@code -1 µS/cm}, {@code if pools}
 * @param change by how much, in the input's unit; empty for words and truths
 * @param reached whether the change itself is enough; else anything beyond it is
 * @param outcome what comes out then
 * @param uncertainties the change in units of the stated uncertainty; empty where none is stated
 */
public record Flip(
        String words, Optional<Double> change, boolean reached, String outcome, Optional<Double> uncertainties) {}
