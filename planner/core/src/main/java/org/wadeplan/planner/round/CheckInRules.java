package org.wadeplan.planner.round;

/** Who is told what and when: the check-in interval and how long after the planned finish a crew counts as overdue. */
public record CheckInRules(
        int everyMin, int overdueAfterMin, String contactRole, String emergencyNumber, String source) {}
