package org.wadeplan.desktop.look;

/** A heading and what stands under it. */
public record Fact(String head, String text) {}
