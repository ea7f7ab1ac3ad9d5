package org.wadeplan.geo.draw;

/**
 * Why a drawn unit is not surveyed.
 *
 * @param ground what kind of loss it is; decides how the others are weighed
 * @param reason in words, such as {@code owner refused by letter}
 */
public record Loss(Ground ground, String reason) {

    /** Kinds of loss. */
    public enum Ground {
        /** No water there: the length is no part of what the survey speaks of. */
        DRY("dry", false),
        /** No stream of the kind that is sampled: the length is no part of what the survey speaks of. */
        NON_TARGET("non-target", false),
        /** There is a stream, but no leave to go there. */
        DENIED("denied", true),
        /** There is a stream, but a reach cannot be laid or reached there. */
        NO_REACH("no-reach", true);

        private final String words;
        private final boolean target;

        Ground(String words, boolean target) {
            this.words = words;
            this.target = target;
        }

        /** {@code non-target} */
        public String words() {
            return words;
        }

        /** Whether the stream there still belongs to what the survey speaks of. */
        boolean isTarget() {
            return target;
        }
    }
}
