/** Cleaning: how each kit set stands along the week, the steps of each cleaning with a timer, and what a find changes. */
@NullMarked
package org.wadeplan.desktop.cleaning;

import org.jspecify.annotations.NullMarked;
