/**
 * Step 3: the decision table picks a method for each site, and says by which rule or why not.
 */
@NullMarked
package org.wadeplan.planner.method;

import org.jspecify.annotations.NullMarked;
