/**
 * Big invented networks and the benchmark that is run on them by {@code planner/bin/bench reaches}.
 */
@NullMarked
package org.wadeplan.geo.bench;

import org.jspecify.annotations.NullMarked;
