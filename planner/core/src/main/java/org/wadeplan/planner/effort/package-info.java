/**
 * Step 4: how to set the unit, how long it takes, how many packs to carry.
 */
@NullMarked
package org.wadeplan.planner.effort;

import org.jspecify.annotations.NullMarked;
