package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.round.Priority;
import org.wadeplan.planner.round.Site;

/** All parts of one site's visit: placed whole or not at all. The note says for which site it stands in. */
record Job(int index, Site site, Priority priority, List<Stop> stops, String note) {}
