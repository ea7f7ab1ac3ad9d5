package org.wadeplan.geo.draw;

/** Whether a stretch of mapped line may be drawn, and if not, on what ground. Ordered: the later ground outweighs. */
public enum Standing {
    /** May be drawn. */
    ELIGIBLE("eligible"),
    /** Left out by a choice of one's own, such as the distance to a road. */
    FILTERED("filtered"),
    /** Whoever holds the land refuses. */
    DENIED("denied"),
    /** Known to hold no water. */
    DRY("dry"),
    /** Mapped as a line but no stream of the kind that is sampled: a pipe, a canal, a line through a lake. */
    NON_TARGET("non-target");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /** {@code non-target} */
    public String words() {
        return words;
    }
}
