package org.wadeplan.planner.round;

/**
 * A person's decision to survey a site by another method than the table says, or by one where the table says none.
 *
 * @param method id of the method
 * @param reason why, in words that are printed wherever the method is
 */
public record MethodOverride(String site, String method, String reason) {}
