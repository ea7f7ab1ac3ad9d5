/**
 * Very many lines in a few arrays: what a whole country's streams fit into and can be searched in.
 */
@NullMarked
package org.wadeplan.geo.lines;

import org.jspecify.annotations.NullMarked;
