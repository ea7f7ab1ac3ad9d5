/** Tests of the trace of a find. */
@NullMarked
package org.wadeplan.planner.decon.trace;

import org.jspecify.annotations.NullMarked;
