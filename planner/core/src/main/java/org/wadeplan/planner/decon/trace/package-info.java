/**
 * A pest seen late: what it makes of the kit, of the waters that the kit was in since and before, and of the rest of the week.
 */
@NullMarked
package org.wadeplan.planner.decon.trace;

import org.jspecify.annotations.NullMarked;
