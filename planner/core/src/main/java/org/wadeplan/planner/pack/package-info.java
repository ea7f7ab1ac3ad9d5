/**
 * Step 9: pages, tracks and calendar from the plan.
 */
@NullMarked
package org.wadeplan.planner.pack;

import org.jspecify.annotations.NullMarked;
