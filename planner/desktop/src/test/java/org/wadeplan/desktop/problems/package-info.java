/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.problems;

import org.jspecify.annotations.NullMarked;
