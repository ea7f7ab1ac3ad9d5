/** Placeholder until the first class lands. */
@NullMarked
package org.wadeplan.planner;

import org.jspecify.annotations.NullMarked;
