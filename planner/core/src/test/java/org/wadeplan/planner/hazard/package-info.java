/**
 * Tests of the same package in main.
 */
@NullMarked
package org.wadeplan.planner.hazard;

import org.jspecify.annotations.NullMarked;
