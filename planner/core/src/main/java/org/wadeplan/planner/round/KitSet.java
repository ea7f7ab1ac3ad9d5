package org.wadeplan.planner.round;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Things that go into the water together and share what they have touched.
 *
 * @param materials every material in the set
 * @param exposedTo waters touched since its last complete treatment, at the start of the round
 */
public record KitSet(
        String id,
        KitPurpose purpose,
        Set<Material> materials,
        StoreState state,
        List<String> exposedTo,
        Optional<Instant> wetSince,
        Optional<String> note) {}
