/**
 * The independent check of a finished plan: plain slow rules that share no code with the search.
 */
@NullMarked
package org.wadeplan.planner.week.verify;

import org.jspecify.annotations.NullMarked;
