/** The command line: reads arguments, calls the core, prints results, and turns what happened into an exit code. */
@NullMarked
package org.wadeplan.cli;

import org.jspecify.annotations.NullMarked;
