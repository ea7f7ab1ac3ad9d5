/** The window itself: how it starts, its frame, and the one class that plugs the planner in. */
@NullMarked
package org.wadeplan.desktop.app;

import org.jspecify.annotations.NullMarked;
