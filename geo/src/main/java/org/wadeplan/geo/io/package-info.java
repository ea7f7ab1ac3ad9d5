/**
 * Map files in and out: GeoPackage and GeoJSON both ways, GPX out.
 *
 * <p>Readers never write to the file they read, and report every fault as a {@link org.wadeplan.geo.problem.Problem}.
 * Writers fill a temporary file beside the target and move it into place, so that no half-written file is ever left.
 * They know no clock: the time that a format wants is handed in.
 */
@NullMarked
package org.wadeplan.geo.io;

import org.jspecify.annotations.NullMarked;
