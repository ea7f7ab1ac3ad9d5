/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.session;

import org.jspecify.annotations.NullMarked;
