/**
 * Files for a handheld and for map programs: tracks, reaches and stakes.
 */
@NullMarked
package org.wadeplan.planner.pack.track;

import org.jspecify.annotations.NullMarked;
