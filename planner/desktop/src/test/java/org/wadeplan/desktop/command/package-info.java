/** Tests of the package of the same name. */
@NullMarked
package org.wadeplan.desktop.command;

import org.jspecify.annotations.NullMarked;
