package org.wadeplan.planner.method;

/**
 * One input cell of a rule.
 *
 * @param text as the table writes it
 * @param test what it means
 */
public record TableCell(String text, UnaryTest test) {}
