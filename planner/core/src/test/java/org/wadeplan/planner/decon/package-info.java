/** Checks of pests at a water, choice of treatments, turnarounds, bath arithmetic and sheets. */
@NullMarked
package org.wadeplan.planner.decon;

import org.jspecify.annotations.NullMarked;
