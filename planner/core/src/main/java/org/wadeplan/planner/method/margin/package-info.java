/**
 * How near a site is to another method: input by input, jointly in units of stated uncertainty, and as chances.
 */
@NullMarked
package org.wadeplan.planner.method.margin;

import org.jspecify.annotations.NullMarked;
