/** Checks of the package of the same name. */
@NullMarked
package org.wadeplan.hazards.register;

import org.jspecify.annotations.NullMarked;
