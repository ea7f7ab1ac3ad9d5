/** Measures decontamination against its goals; a main class, never a timed test. */
@NullMarked
package org.wadeplan.planner.decon.bench;

import org.jspecify.annotations.NullMarked;
