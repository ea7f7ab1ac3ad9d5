/**
 * The method once more, with what was measured on arrival, and how far to shift the reach where a pool is the cause.
 */
@NullMarked
package org.wadeplan.planner.method.walk;

import org.jspecify.annotations.NullMarked;
