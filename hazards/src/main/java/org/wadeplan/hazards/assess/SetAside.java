package org.wadeplan.hazards.assess;

/**
 * A hazard that is not on the list although someone might look for it there.
 *
 * @param hazardId row of the register
 * @param reason why it was left out
 */
public record SetAside(String hazardId, String reason) {}
