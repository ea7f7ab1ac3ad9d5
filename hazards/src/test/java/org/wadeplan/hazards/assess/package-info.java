/** Checks of the package of the same name. */
@NullMarked
package org.wadeplan.hazards.assess;

import org.jspecify.annotations.NullMarked;
