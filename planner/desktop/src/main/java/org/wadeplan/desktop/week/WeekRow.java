package org.wadeplan.desktop.week;

/** A line of the table of the week; everything in words. */
public record WeekRow(
        String id,
        String day,
        String crew,
        String start,
        String end,
        String what,
        String site,
        String kitSets,
        String slack,
        String boundBy) {}
