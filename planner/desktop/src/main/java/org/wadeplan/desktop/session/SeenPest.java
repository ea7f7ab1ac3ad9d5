package org.wadeplan.desktop.session;

import java.time.Instant;

/**
 * A pest that somebody saw.
 *
 * @param water id of the water
 * @param pest id of the pest
 */
public record SeenPest(String water, String pest, Instant seenAt) {}
