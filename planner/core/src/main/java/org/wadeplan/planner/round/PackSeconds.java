package org.wadeplan.planner.round;

/** Usable button seconds from one healthy charged pack, up to and including a conductivity in uS/cm. */
public record PackSeconds(double conductivityMaxUsCm, int usableS, String source) {}
