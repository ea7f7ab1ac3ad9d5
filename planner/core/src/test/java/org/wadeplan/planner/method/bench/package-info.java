/** Measures the method table against its goals; a main class, never a timed test. */
@NullMarked
package org.wadeplan.planner.method.bench;

import org.jspecify.annotations.NullMarked;
