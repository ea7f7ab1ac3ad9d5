/** Placeholder until the first class lands. */
@NullMarked
package org.wadeplan.desktop;

import org.jspecify.annotations.NullMarked;
