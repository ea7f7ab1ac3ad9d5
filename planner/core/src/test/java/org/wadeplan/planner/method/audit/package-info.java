/** Tests of the audit of decision tables. */
@NullMarked
package org.wadeplan.planner.method.audit;

import org.jspecify.annotations.NullMarked;
