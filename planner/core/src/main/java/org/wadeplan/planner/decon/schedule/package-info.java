/** The week's cleaning by the clock: who cleans which kit set where, in which tub, from which bath, and what it uses up. */
@NullMarked
package org.wadeplan.planner.decon.schedule;

import org.jspecify.annotations.NullMarked;
