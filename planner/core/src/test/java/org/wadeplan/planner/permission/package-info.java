/** Tests. */
@NullMarked
package org.wadeplan.planner.permission;

import org.jspecify.annotations.NullMarked;
