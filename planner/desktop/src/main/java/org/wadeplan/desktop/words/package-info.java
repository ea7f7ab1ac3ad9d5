/** Every word that the window shows, from one resource bundle. */
@NullMarked
package org.wadeplan.desktop.words;

import org.jspecify.annotations.NullMarked;
