/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.pack;

import org.jspecify.annotations.NullMarked;
