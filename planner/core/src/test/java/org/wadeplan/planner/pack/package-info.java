/**
 * Tests of the same package in main, and a small round that they share.
 */
@NullMarked
package org.wadeplan.planner.pack;

import org.jspecify.annotations.NullMarked;
