/** Tests of comparing tables and of walk-overs. */
@NullMarked
package org.wadeplan.planner.method.compare;

import org.jspecify.annotations.NullMarked;
