package org.wadeplan.desktop.week;

import java.util.List;

/**
 * A row of bars.
 *
 * @param label crew or kit set
 * @param kit true for a kit set
 * @param bars by start
 */
public record Lane(String label, boolean kit, List<WeekBar> bars) {}
