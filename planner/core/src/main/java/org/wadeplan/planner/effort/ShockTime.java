package org.wadeplan.planner.effort;

/**
 * Button seconds that a visit takes.
 *
 * @param p50S median, s
 * @param p80S 80th percentile, s
 * @param pastVisits how many visits of the site it rests on; 0 where only the model speaks
 * @param basis in words: where the figures come from
 */
public record ShockTime(int p50S, int p80S, int pastVisits, String basis) {}
