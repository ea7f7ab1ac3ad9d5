/**
 * Step 8: turns each planned visit into an exposure, and the assessed hazards into a briefing.
 */
@NullMarked
package org.wadeplan.planner.hazard;

import org.jspecify.annotations.NullMarked;
