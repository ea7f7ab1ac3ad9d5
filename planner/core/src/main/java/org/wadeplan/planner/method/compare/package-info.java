/**
 * Two versions of a method table held against each other: which sites change, and in which cases they differ.
 */
@NullMarked
package org.wadeplan.planner.method.compare;

import org.jspecify.annotations.NullMarked;
