/**
 * What a crew and its vehicle must be fit for before a visit is given to them.
 */
@NullMarked
package org.wadeplan.planner.week.rule;

import org.jspecify.annotations.NullMarked;
