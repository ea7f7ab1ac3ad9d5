/** The week: a lane for each crew and kit set, night and tide behind, with its table beside it. */
@NullMarked
package org.wadeplan.desktop.week;

import org.jspecify.annotations.NullMarked;
