/** Tests. */
@NullMarked
package org.wadeplan.planner.week;

import org.jspecify.annotations.NullMarked;
