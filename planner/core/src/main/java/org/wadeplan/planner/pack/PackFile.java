package org.wadeplan.planner.pack;

import java.util.OptionalInt;

/**
 * One file of a pack.
 *
 * @param name inside the pack's folder
 * @param what in words, for the list of contents
 * @param bytes its size
 * @param pages for a PDF
 */
public record PackFile(String name, String what, long bytes, OptionalInt pages) {}
