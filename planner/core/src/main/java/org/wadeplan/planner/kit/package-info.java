/**
 * Step 5: what a visit needs; and after the week, what each crew loads each day, serial by serial.
 */
@NullMarked
package org.wadeplan.planner.kit;

import org.jspecify.annotations.NullMarked;
