/**
 * The week as people agreed it among themselves, brought into the form of a plan. Nothing is searched and nothing is moved.
 */
@NullMarked
package org.wadeplan.planner.week.agreed;

import org.jspecify.annotations.NullMarked;
