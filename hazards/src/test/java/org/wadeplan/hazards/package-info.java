/** Checks of the module's layering. */
@NullMarked
package org.wadeplan.hazards;

import org.jspecify.annotations.NullMarked;
