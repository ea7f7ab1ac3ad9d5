/**
 * When it is light and dark at a place on a date.
 */
@NullMarked
package org.wadeplan.planner.week.light;

import org.jspecify.annotations.NullMarked;
