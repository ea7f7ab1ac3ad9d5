/** What will be printed, where to, and what was written. */
@NullMarked
package org.wadeplan.desktop.pack;

import org.jspecify.annotations.NullMarked;
