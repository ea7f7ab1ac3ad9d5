/** Everything that was found, with its cause and what to do. */
@NullMarked
package org.wadeplan.desktop.problems;

import org.jspecify.annotations.NullMarked;
