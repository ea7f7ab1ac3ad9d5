/** Checks of drawing places for a round. */
@NullMarked
package org.wadeplan.planner.draw;

import org.jspecify.annotations.NullMarked;
