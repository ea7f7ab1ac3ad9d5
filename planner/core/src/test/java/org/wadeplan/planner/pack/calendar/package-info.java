/**
 * Tests of the same package in main.
 */
@NullMarked
package org.wadeplan.planner.pack.calendar;

import org.jspecify.annotations.NullMarked;
