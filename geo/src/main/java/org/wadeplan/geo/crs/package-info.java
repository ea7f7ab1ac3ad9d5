/**
 * The one door to coordinate systems: nothing else in Wadeplan asks a library for one.
 */
@NullMarked
package org.wadeplan.geo.crs;

import org.jspecify.annotations.NullMarked;
