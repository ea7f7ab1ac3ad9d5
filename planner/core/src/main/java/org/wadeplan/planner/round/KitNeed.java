package org.wadeplan.planner.round;

import java.util.Optional;

/**
 * One line of what a part of a visit needs.
 *
 * @param spare carried on top, per crew-day
 * @param container what it travels in
 * @param clean true where it must be clean and dry on leaving
 * @param certificate the certificate that must be valid on the day
 */
public record KitNeed(
        String method,
        VisitPart part,
        String kind,
        double quantity,
        KitPer per,
        double spare,
        String container,
        boolean clean,
        Optional<String> certificate,
        String source) {}
