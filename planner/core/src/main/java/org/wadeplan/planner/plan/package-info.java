/**
 * The plan: what every step found, with what it was made from. RoundPlanner is the only class that knows the order.
 */
@NullMarked
package org.wadeplan.planner.plan;

import org.jspecify.annotations.NullMarked;
