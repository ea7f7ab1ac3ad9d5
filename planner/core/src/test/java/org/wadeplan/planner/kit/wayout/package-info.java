/** Checks of ways out of shortages. */
@NullMarked
package org.wadeplan.planner.kit.wayout;

import org.jspecify.annotations.NullMarked;
