/**
 * The error model that every module shares.
 *
 * <p>Reading a person's files never stops at the first fault: a reader returns {@link org.wadeplan.geo.problem.Checked},
 * which holds the value where one could be made, and every {@link org.wadeplan.geo.problem.Problem} that was found on
 * the way. A problem says what was found, where, what is allowed and what to do.
 */
@NullMarked
package org.wadeplan.geo.problem;

import org.jspecify.annotations.NullMarked;
