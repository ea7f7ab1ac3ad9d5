/**
 * Step 1: reads the round folder, checks everything and reports every problem at once.
 */
@NullMarked
package org.wadeplan.planner.files;

import org.jspecify.annotations.NullMarked;
