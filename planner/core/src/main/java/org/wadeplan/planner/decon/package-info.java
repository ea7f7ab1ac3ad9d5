/**
 * Step 6: what it takes to bring a kit set from one water to another without carrying anything.
 */
@NullMarked
package org.wadeplan.planner.decon;

import org.jspecify.annotations.NullMarked;
