/** Tests. */
@NullMarked
package org.wadeplan.planner.week.verify;

import org.jspecify.annotations.NullMarked;
