package org.wadeplan.planner.pack.page;

/** A finished PDF and how many pages it has. */
public record PressedPdf(byte[] bytes, int pages) {}
