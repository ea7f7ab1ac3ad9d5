/**
 * From what people will be exposed to on one visit to the hazards that apply, how they rate, and the limits at which
 * work stops.
 *
 * <p>Two ideas hold everywhere. What is not known is never taken as harmless: it counts as the worst plausible or becomes a
 * question. And a rating never overrules a stop limit.
 */
@NullMarked
package org.wadeplan.hazards.assess;

import org.jspecify.annotations.NullMarked;
