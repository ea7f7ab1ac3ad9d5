/**
 * Step 7: who goes where when, with which kit set, and the cleaning in between.
 */
@NullMarked
package org.wadeplan.planner.week;

import org.jspecify.annotations.NullMarked;
