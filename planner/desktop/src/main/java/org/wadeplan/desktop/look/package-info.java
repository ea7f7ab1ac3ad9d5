/** Colours, hatches and shapes, so that no state is told by colour alone. */
@NullMarked
package org.wadeplan.desktop.look;

import org.jspecify.annotations.NullMarked;
