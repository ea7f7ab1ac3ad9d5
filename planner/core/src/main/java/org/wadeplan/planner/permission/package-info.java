/**
 * May this site be fished by this method on this day: permits, closed seasons, notice, consent, night access.
 */
@NullMarked
package org.wadeplan.planner.permission;

import org.jspecify.annotations.NullMarked;
