package org.wadeplan.hazards.assess;

import java.util.List;

/** What a trigger comes to on a visit. */
sealed interface Finding {

    /**
     * The hazard applies.
     *
     * @param why each condition that held, with the number found or "not known"
     */
    record Applies(List<String> why) implements Finding {}

    /**
     * It would apply if something were so, and nobody has said.
     *
     * @param open what to find out
     */
    record Open(List<String> open) implements Finding {}

    /** It does not apply. */
    record Absent() implements Finding {}
}
