/**
 * Step 2 on a round: a reach for every site, and the search for new ones.
 */
@NullMarked
package org.wadeplan.planner.reach;

import org.jspecify.annotations.NullMarked;
