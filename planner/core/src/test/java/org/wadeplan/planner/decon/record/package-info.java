@NullMarked
package org.wadeplan.planner.decon.record;

import org.jspecify.annotations.NullMarked;
