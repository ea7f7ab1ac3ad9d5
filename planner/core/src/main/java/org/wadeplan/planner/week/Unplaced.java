package org.wadeplan.planner.week;

import java.util.List;

/** A site that is not visited, with the reason for each day or crew that was tried, or for all of them. */
public record Unplaced(String site, String method, List<String> reasons) {}
