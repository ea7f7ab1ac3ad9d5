package org.wadeplan.planner.method.compare;

import java.util.List;

/**
 * Cases that come out otherwise.
 *
 * @param where what they have in common, in words, input by input; none for all cases
 */
public record RegionChange(List<String> where, String before, String after) {}
