/** Tests of the exposure ledger. */
@NullMarked
package org.wadeplan.planner.decon.ledger;

import org.jspecify.annotations.NullMarked;
