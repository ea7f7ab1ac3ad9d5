package org.wadeplan.hazards.assess;

import org.wadeplan.hazards.register.ControlLevel;

/**
 * Someone has said that the controls of a level are in place today for a hazard.
 *
 * @param hazardId row of the register
 * @param level whose controls are in place; eliminating takes the hazard off the list
 */
public record ControlInPlace(String hazardId, ControlLevel level) {}
