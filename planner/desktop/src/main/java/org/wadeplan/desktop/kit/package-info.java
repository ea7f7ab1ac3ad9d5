/** Loading: what a crew takes along on a day, ticked off item by item, with what is short above it. */
@NullMarked
package org.wadeplan.desktop.kit;

import org.jspecify.annotations.NullMarked;
