/** Cleanings and baths as they were really done: what a record clears, why another is refused, and which set may leave. */
@NullMarked
package org.wadeplan.planner.decon.record;

import org.jspecify.annotations.NullMarked;
