/** Long work off the window's thread, with progress and cancel. */
@NullMarked
package org.wadeplan.desktop.work;

import org.jspecify.annotations.NullMarked;
