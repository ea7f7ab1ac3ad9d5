/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.cleaning;

import org.jspecify.annotations.NullMarked;
