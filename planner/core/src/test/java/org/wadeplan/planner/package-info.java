/** What the tests of several packages share. */
@NullMarked
package org.wadeplan.planner;

import org.jspecify.annotations.NullMarked;
