/** Checks of the start settings, the times and the packs. */
@NullMarked
package org.wadeplan.planner.effort;

import org.jspecify.annotations.NullMarked;
