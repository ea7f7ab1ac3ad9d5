package org.wadeplan.planner.effort;

import org.wadeplan.planner.round.VisitPart;

/**
 * How long one part of a visit takes on site, from the tailgate and back.
 *
 * @param p50Min median, minutes
 * @param p80Min 80th percentile, minutes: what the week is planned with
 * @param pastVisits how many visits of the site it rests on; below 3 the method's own figure stands in for the rest, and 0
 *     means that figure alone
 * @param basis in words, for the page
 */
public record PartEffort(VisitPart part, int p50Min, int p80Min, int pastVisits, String basis) {}
