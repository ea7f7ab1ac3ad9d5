/**
 * Spatially balanced draws of places along a stream network, with reserves in order.
 *
 * <p>The road of the data: lines cut into {@link org.wadeplan.geo.draw.FrameStretch stretches} that may or may not be
 * drawn, stretches cut into {@link org.wadeplan.geo.draw.FrameUnits units}, units drawn by the
 * {@link org.wadeplan.geo.draw.LocalPivot local pivotal method}, first twice as many as wanted, then halved by the same
 * method into base and reserves. Lengths are whole millimetres and chances whole numbers, so that inclusion probabilities
 * hold exactly and every machine draws the same.
 */
@NullMarked
package org.wadeplan.geo.draw;

import org.jspecify.annotations.NullMarked;
