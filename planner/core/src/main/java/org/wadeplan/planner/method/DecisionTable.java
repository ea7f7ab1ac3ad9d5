package org.wadeplan.planner.method;

/**
 * A decision table, parsed. Skeleton: the method branch fills it in.
 *
 * @param name what the table is called
 * @param hash SHA-256 of the file it was read from, 64 hexadecimal characters
 */
public record DecisionTable(String name, String hash) {}
