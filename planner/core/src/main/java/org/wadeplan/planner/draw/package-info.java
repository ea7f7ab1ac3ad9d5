/**
 * A spatially balanced draw of places to survey along the round's streams, with reserves.
 */
@NullMarked
package org.wadeplan.planner.draw;

import org.jspecify.annotations.NullMarked;
