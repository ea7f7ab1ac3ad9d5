package org.wadeplan.planner.method.margin;

import java.util.List;

/**
 * The most plausible change of all inputs with a stated uncertainty together that gives another outcome.
 *
 * @param uncertainties how far it is: the root of the sum of squares of the changes, each in its own standard uncertainty
 * @param changes the inputs that change, in words
 */
public record JointFlip(double uncertainties, List<String> changes, String outcome) {}
