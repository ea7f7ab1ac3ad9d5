/** The map: stream lines, flow, reaches, stakes, parcels, with the table of sites beside it. */
@NullMarked
package org.wadeplan.desktop.map;

import org.jspecify.annotations.NullMarked;
