/**
 * The content of a briefing: what the leader reads aloud before anyone goes in, and what stands beside it on paper.
 *
 * <p>Facts only, no page. A briefing never says that a site may be entered: it says what was found, what is not known and
 * when to stop.
 */
@NullMarked
package org.wadeplan.hazards.briefing;

import org.jspecify.annotations.NullMarked;
