/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.work;

import org.jspecify.annotations.NullMarked;
