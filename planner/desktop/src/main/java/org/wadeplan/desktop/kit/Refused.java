package org.wadeplan.desktop.kit;

import java.util.List;

/**
 * A tick that was refused, until it is let go by name or something else is done.
 *
 * @param row the line
 * @param what the thing in words
 * @param reasons each in a sentence, with what to do
 * @param canLetGo whether a named person may set the reasons aside
 */
public record Refused(LoadRow row, String what, List<String> reasons, boolean canLetGo) {}
