package org.wadeplan.desktop.week;

/** A heading and what stands under it. */
public record Fact(String head, String text) {}
