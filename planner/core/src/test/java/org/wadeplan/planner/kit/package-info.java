/** Checks of what visits need, what crews load and what is missing. */
@NullMarked
package org.wadeplan.planner.kit;

import org.jspecify.annotations.NullMarked;
