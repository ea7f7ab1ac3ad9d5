package org.wadeplan.planner.decon.trace;

import java.util.Optional;

/** A find as somebody typed it, nothing checked yet. Empty where it was not given. */
public record FindWords(
        Optional<String> water,
        Optional<String> pest,
        Optional<String> site,
        Optional<String> seen,
        Optional<String> note) {}
