/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.look;

import org.jspecify.annotations.NullMarked;
