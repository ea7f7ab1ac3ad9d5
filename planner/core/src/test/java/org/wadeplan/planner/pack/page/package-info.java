/**
 * Tests of the same package in main.
 */
@NullMarked
package org.wadeplan.planner.pack.page;

import org.jspecify.annotations.NullMarked;
