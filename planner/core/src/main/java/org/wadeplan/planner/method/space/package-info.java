/**
 * The cases that a decision table can be asked about, cut where any of its cells changes its answer. Within one slice of
 * each column every cell answers alike, so what holds for one case of a box of slices holds for all of them: exact, and
 * no sampling.
 */
@NullMarked
package org.wadeplan.planner.method.space;

import org.jspecify.annotations.NullMarked;
