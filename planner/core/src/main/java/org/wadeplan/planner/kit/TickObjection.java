package org.wadeplan.planner.kit;

/**
 * Something that stands against a tick.
 *
 * @param words what was found, with the item
 * @param remedy what to do about it
 */
public record TickObjection(Ground ground, String words, String remedy) {

    /** What kind of objection it is, and whether a named person may let the item go all the same. */
    public enum Ground {
        NO_SUCH_CREW_DAY(false),
        UNKNOWN_ITEM(false),
        ALREADY_TICKED(false),
        WITH_OTHER_CREW(false),
        NOT_ON_LIST(true),
        NOT_THERE(true),
        OUT_OF_SERVICE(true),
        NOT_VALID(true),
        NOT_CLEAN_AND_DRY(true),
        USED_BEFORE(true);

        private final boolean overridable;

        Ground(boolean overridable) {
            this.overridable = overridable;
        }

        /** False where letting it go is no matter of judgement, because the tick could not be true. */
        public boolean overridable() {
            return overridable;
        }
    }
}
