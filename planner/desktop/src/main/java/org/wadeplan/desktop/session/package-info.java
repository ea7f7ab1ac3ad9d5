/** What is open and what is selected, as values; undo is the value before. */
@NullMarked
package org.wadeplan.desktop.session;

import org.jspecify.annotations.NullMarked;
