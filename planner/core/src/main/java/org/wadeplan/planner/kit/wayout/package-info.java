/**
 * Ways out of shortages: each is tried on the week in force before anyone is told of it.
 */
@NullMarked
package org.wadeplan.planner.kit.wayout;

import org.jspecify.annotations.NullMarked;
