/** Tests of the agreed week. */
@NullMarked
package org.wadeplan.planner.week.agreed;

import org.jspecify.annotations.NullMarked;
