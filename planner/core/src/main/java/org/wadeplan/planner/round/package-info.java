/**
 * The round as a person keeps it, read and checked: every table as records, unknown values as empty ones.
 */
@NullMarked
package org.wadeplan.planner.round;

import org.jspecify.annotations.NullMarked;
