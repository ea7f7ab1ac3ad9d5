package org.wadeplan.planner.files;

/** What is wrong with one cell or one value, without the place where it stands. */
record Fault(String code, String found, String expected, String remedy) {}
