/** Tests of margins and chances. */
@NullMarked
package org.wadeplan.planner.method.margin;

import org.jspecify.annotations.NullMarked;
