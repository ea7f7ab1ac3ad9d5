package org.wadeplan.desktop.map;

import org.wadeplan.desktop.look.Mark;

/**
 * A line of the table of sites; everything in words.
 *
 * @param method as people say it, or a dash
 * @param rule number of the rule that chose it, or a dash
 * @param days when it is planned, or a dash
 * @param crews who goes, or a dash
 * @param mark shape of its state
 * @param state its state in words
 */
public record SiteRow(
        String site,
        String name,
        String stream,
        String method,
        String rule,
        String days,
        String crews,
        Mark mark,
        String state) {}
