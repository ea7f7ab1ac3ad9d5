/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.kit;

import org.jspecify.annotations.NullMarked;
