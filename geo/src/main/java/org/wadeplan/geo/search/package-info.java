/**
 * Candidate reaches along all stream lines: what is ruled out and why, what fits into the rest, and how good it is.
 */
@NullMarked
package org.wadeplan.geo.search;

import org.jspecify.annotations.NullMarked;
