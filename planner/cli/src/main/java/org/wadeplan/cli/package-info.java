/** Placeholder until the first class lands. */
@NullMarked
package org.wadeplan.cli;

import org.jspecify.annotations.NullMarked;
