/** How long gear takes to dry and what may live on it: estimates to plan with. Nothing is ever released by them. */
@NullMarked
package org.wadeplan.planner.decon.drying;

import org.jspecify.annotations.NullMarked;
