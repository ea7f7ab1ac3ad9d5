package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;

/**
 * Something that is needed on a day and is not there, or not valid, or not clean.
 *
 * @param crews the crews that ask for it
 * @param reason in words, with what was found
 * @param remedy the plainest way out
 */
public record Shortage(
        LocalDate date,
        List<String> crews,
        String kind,
        double needed,
        double available,
        String reason,
        String remedy) {}
