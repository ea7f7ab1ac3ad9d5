/** Checks of the limits against published tables and hand-worked values. */
@NullMarked
package org.wadeplan.hazards.limits;

import org.jspecify.annotations.NullMarked;
