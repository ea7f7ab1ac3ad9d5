/** Entering a pest that somebody saw. */
@NullMarked
package org.wadeplan.desktop.find;

import org.jspecify.annotations.NullMarked;
