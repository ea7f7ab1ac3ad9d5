package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.Turnaround;

/**
 * Whether a kit set may leave for a water, as far as the records say. It says what they hold; it never says that kit is safe.
 *
 * @param held every water that the set was in, oldest first, with what became of it
 * @param cleared which record clears which pest on which material
 * @param missing what stands against leaving, each a sentence; none where the records clear it
 * @param refused cleanings of the set that were not accepted, with why
 * @param letGo overrides on record: they credit nothing
 * @param earliest when it could leave at the soonest, by waiting or by a clean begun now; empty where nothing helps
 * @param waysOut what to do instead, each tried out
 */
public record ReleaseAnswer(
        String kitSet,
        String toWater,
        Instant at,
        Verdict verdict,
        List<Held> held,
        List<Cleared> cleared,
        List<String> missing,
        List<String> refused,
        List<String> letGo,
        Optional<Instant> earliest,
        List<String> waysOut) {

    /** What the records say. */
    public enum Verdict {
        /** The records clear every pest that counts, on every material. */
        CLEARED,
        /** They do not, and a named person let it go all the same: it is not clean. */
        LET_GO,
        /** They do not. */
        HELD
    }

    /**
     * A water that the set was in.
     *
     * @param pests that count there, each with its status
     * @param open pairs that no record clears yet, in words; none where it is cleared or the set goes back there
     */
    public record Held(String water, String where, Instant until, List<String> pests, List<String> open) {}

    /** A pair that a record clears. */
    public record Cleared(String water, String cleaning, Turnaround.Cover cover, Instant from) {}

    public boolean mayLeave() {
        return verdict == Verdict.CLEARED;
    }
}
