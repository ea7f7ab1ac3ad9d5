/**
 * Tests of the search for reaches on a round.
 */
@NullMarked
package org.wadeplan.planner.reach;

import org.jspecify.annotations.NullMarked;
