/**
 * The search for a week: construction by best insertion, then ruin and recreate, in whole numbers and with a seed.
 */
@NullMarked
package org.wadeplan.planner.week.search;

import org.jspecify.annotations.NullMarked;
