/** Tests of the drying estimates. */
@NullMarked
package org.wadeplan.planner.decon.drying;

import org.jspecify.annotations.NullMarked;
