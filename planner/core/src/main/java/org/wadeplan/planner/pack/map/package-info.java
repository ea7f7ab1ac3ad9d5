/**
 * Drawings as vectors: the map of a reach and the picture of the week.
 */
@NullMarked
package org.wadeplan.planner.pack.map;

import org.jspecify.annotations.NullMarked;
