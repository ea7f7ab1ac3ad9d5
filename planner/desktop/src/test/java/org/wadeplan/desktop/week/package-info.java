/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.week;

import org.jspecify.annotations.NullMarked;
