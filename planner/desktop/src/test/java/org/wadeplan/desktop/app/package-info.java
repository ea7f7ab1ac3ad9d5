/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.app;

import org.jspecify.annotations.NullMarked;
