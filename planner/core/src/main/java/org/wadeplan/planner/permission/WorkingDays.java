package org.wadeplan.planner.permission;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * Monday to Friday. Public holidays are not known to a round folder, so whoever prints a date from here says so.
 *
 * <p>Notice of n working days is read as n clear working days between the notice and the visit: for a visit on a Monday,
 * two working days' notice is given by the Wednesday before.
 */
final class WorkingDays {

    private WorkingDays() {}

    static boolean isWorkingDay(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }

    /** The last working day on which notice leaves that many clear working days before the visit. */
    static LocalDate latestNotice(LocalDate visit, int clearDays) {
        LocalDate day = visit.minusDays(1);
        int clear = 0;
        while (clear < clearDays || !isWorkingDay(day)) {
            if (isWorkingDay(day)) {
                clear++;
            }
            day = day.minusDays(1);
        }
        return day;
    }

    /** The first working day on which a visit is lawful after notice given on a day. */
    static LocalDate earliestVisit(LocalDate notice, int clearDays) {
        LocalDate day = notice.plusDays(1);
        while (!isWorkingDay(day) || latestNotice(day, clearDays).isBefore(notice)) {
            day = day.plusDays(1);
        }
        return day;
    }
}
