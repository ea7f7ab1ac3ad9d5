/**
 * Tests of the same package in main.
 */
@NullMarked
package org.wadeplan.planner.pack.track;

import org.jspecify.annotations.NullMarked;
