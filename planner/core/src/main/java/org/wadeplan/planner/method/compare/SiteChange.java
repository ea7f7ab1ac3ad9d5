package org.wadeplan.planner.method.compare;

import java.util.List;

/**
 * A site that comes out otherwise.
 *
 * @param before what the first table says, with its rules
 * @param after what the second says
 * @param reasons the cells that make the difference
 */
public record SiteChange(String site, String before, String after, List<String> reasons) {}
