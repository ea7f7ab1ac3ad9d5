/** What can hurt people at a site, the limits at which work stops, and what to say about it before going in. */
@NullMarked
package org.wadeplan.hazards;

import org.jspecify.annotations.NullMarked;
