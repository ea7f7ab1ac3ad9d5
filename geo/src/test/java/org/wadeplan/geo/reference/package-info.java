/**
 * Check values from outside the project, and the open data that is used where it is at hand.
 */
@NullMarked
package org.wadeplan.geo.reference;

import org.jspecify.annotations.NullMarked;
