/**
 * The week as a calendar that any calendar program reads (RFC 5545).
 */
@NullMarked
package org.wadeplan.planner.pack.calendar;

import org.jspecify.annotations.NullMarked;
