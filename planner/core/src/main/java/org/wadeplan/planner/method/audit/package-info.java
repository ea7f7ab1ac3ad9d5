/**
 * What is wrong with a decision table, exactly: cases without a rule, rules that contradict or repeat one another, rules
 * that never answer. Each finding comes with a case that shows it, the sites that it hits and a way to mend it.
 */
@NullMarked
package org.wadeplan.planner.method.audit;

import org.jspecify.annotations.NullMarked;
