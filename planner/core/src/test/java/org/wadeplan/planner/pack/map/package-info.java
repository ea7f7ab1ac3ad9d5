/**
 * Tests of the same package in main.
 */
@NullMarked
package org.wadeplan.planner.pack.map;

import org.jspecify.annotations.NullMarked;
