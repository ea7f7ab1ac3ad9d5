package org.wadeplan.planner.plan;

/**
 * What a plan was made from; printed on every page.
 *
 * @param label short enough for a footer: the first ten characters of the plan's own hash
 * @param inputHash SHA-256 over the round folder's files
 * @param seed the seed that was used
 * @param iterations the search budget that was used
 * @param program version of Wadeplan
 */
public record PlanVersion(String label, String inputHash, long seed, int iterations, String program) {}
