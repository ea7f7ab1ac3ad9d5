/** Tests. */
@NullMarked
package org.wadeplan.planner.week.light;

import org.jspecify.annotations.NullMarked;
