/** Checks of the package of the same name. */
@NullMarked
package org.wadeplan.hazards.briefing;

import org.jspecify.annotations.NullMarked;
