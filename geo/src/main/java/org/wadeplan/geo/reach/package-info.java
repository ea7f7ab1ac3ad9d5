/**
 * Reaches laid along stream lines: the start at the downstream end, sub-reaches lettered upstream, a stake at every end.
 */
@NullMarked
package org.wadeplan.geo.reach;

import org.jspecify.annotations.NullMarked;
