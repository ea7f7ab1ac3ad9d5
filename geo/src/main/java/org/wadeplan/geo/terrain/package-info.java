/**
 * How high the ground lies and how steeply a stream falls, where a grid of elevations can tell.
 */
@NullMarked
package org.wadeplan.geo.terrain;

import org.jspecify.annotations.NullMarked;
