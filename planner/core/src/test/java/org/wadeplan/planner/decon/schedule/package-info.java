@NullMarked
package org.wadeplan.planner.decon.schedule;

import org.jspecify.annotations.NullMarked;
