/** One list of commands that fills the menus, the tool row, the shortcuts and the help. */
@NullMarked
package org.wadeplan.desktop.command;

import org.jspecify.annotations.NullMarked;
