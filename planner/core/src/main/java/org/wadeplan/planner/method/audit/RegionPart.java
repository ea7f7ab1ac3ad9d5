package org.wadeplan.planner.method.audit;

/**
 * What a region asks of one input.
 *
 * @param input its name in the table
 * @param words what people call it, and what it has to be, with its unit
 * @param cell the same as a cell of the table
 * @param cause whether it is here that the rules meet, or cut each other
 */
public record RegionPart(String input, String words, String cell, boolean cause) {}
