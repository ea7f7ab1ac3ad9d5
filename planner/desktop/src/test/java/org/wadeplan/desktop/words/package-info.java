/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.words;

import org.jspecify.annotations.NullMarked;
