/**
 * Makes the geometry of the demo rounds again, byte for byte. Everything in it is invented.
 */
@NullMarked
package org.wadeplan.geo.demo;

import org.jspecify.annotations.NullMarked;
