package org.wadeplan.desktop.cleaning;

import org.wadeplan.desktop.look.Mark;

/** How a kit set stands at the moment chosen; everything in words. */
public record SetRow(String kitSet, Mark mark, String state, String since, String until, String waters, String find) {}
