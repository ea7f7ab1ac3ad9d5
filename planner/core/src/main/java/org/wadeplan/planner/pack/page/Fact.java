package org.wadeplan.planner.pack.page;

/** A label with its value in words. */
record Fact(String label, String value) {}
