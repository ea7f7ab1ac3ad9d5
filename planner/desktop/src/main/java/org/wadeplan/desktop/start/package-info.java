/** The page that is shown while no round is open. */
@NullMarked
package org.wadeplan.desktop.start;

import org.jspecify.annotations.NullMarked;
