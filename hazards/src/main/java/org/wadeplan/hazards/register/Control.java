package org.wadeplan.hazards.register;

/**
 * One thing done against a hazard.
 *
 * @param level where it stands in the hierarchy
 * @param owner the role that sees to it: leader, operator, netter, bank watcher, driver, first aider, office, everyone
 * @param text what to do, in short sentences to be read aloud
 */
public record Control(ControlLevel level, String owner, String text) {}
