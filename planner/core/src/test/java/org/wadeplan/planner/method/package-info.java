/** Checks of the decision table and its reader. */
@NullMarked
package org.wadeplan.planner.method;

import org.jspecify.annotations.NullMarked;
