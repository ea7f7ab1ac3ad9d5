/** Our answers held against a general-purpose DMN engine; it is on the class path of tests only. */
@NullMarked
package org.wadeplan.planner.method.engine;

import org.jspecify.annotations.NullMarked;
