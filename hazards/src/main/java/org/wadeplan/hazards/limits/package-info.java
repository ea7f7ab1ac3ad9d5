/**
 * Limits for people in and near water: published formulas with their sources, and nothing decided here about a site.
 *
 * <p>Every formula has a span in which it was measured or published. A number outside it is refused with a reason
 * ({@link org.wadeplan.hazards.limits.Estimate.Refused}); it is never pulled back to the nearest edge, because the edge
 * would look like an answer.
 */
@NullMarked
package org.wadeplan.hazards.limits;

import org.jspecify.annotations.NullMarked;
