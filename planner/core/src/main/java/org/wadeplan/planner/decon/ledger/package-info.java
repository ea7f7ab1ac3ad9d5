/**
 * What every kit set, and every item that goes into the water outside a set, has touched, how it was treated, and for which
 * waters it is released when. Exposure belongs to the kit, not to the crew.
 */
@NullMarked
package org.wadeplan.planner.decon.ledger;

import org.jspecify.annotations.NullMarked;
