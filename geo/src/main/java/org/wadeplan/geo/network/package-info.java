/**
 * Stream lines joined into a network that knows which way the water flows.
 */
@NullMarked
package org.wadeplan.geo.network;

import org.jspecify.annotations.NullMarked;
