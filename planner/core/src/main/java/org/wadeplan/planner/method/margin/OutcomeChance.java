package org.wadeplan.planner.method.margin;

/**
 * How likely an outcome is under the stated uncertainties.
 *
 * @param chance from 0 to 1
 */
public record OutcomeChance(String outcome, double chance) {}
