/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.find;

import org.jspecify.annotations.NullMarked;
