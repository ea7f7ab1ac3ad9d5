package org.wadeplan.planner.round;

import java.util.Optional;

/** What people noted about a site: an entry of the hazard register, or words of their own. */
public record SiteHazard(
        String site,
        Optional<String> hazard,
        String text,
        Optional<String> subReach,
        boolean newSinceLast,
        String source) {}
