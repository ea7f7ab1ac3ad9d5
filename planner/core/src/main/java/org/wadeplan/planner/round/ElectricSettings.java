package org.wadeplan.planner.round;

/** How a backpack unit was set. Duty is the share of each second with current, per cent. */
public record ElectricSettings(double frequencyHz, double pulseWidthMs, double dutyPct, double voltageV) {}
