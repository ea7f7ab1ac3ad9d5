/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.map;

import org.jspecify.annotations.NullMarked;
