/**
 * How people reach a stream on foot: from which road or track, how far, how steep, and across whose land.
 */
@NullMarked
package org.wadeplan.geo.access;

import org.jspecify.annotations.NullMarked;
