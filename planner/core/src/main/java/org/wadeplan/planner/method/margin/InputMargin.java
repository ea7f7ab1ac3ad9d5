package org.wadeplan.planner.method.margin;

import java.util.List;

/**
 * How far one input may change, the others staying as they are.
 *
 * @param input its name in the table
 * @param words what people call it, with its value
 * @param flips the nearest change downwards and upwards, or each other word or truth, that gives another outcome; none where
 *     no possible value does
 */
public record InputMargin(String input, String words, List<Flip> flips) {}
