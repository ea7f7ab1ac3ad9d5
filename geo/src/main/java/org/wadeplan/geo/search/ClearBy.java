package org.wadeplan.geo.search;

/** How the distance between a reach and a place to keep clear of is measured. */
public enum ClearBy {
    /** Straight across the ground: also keeps clear of places on neighbouring streams. */
    STRAIGHT("in a straight line"),
    /** Along the stream lines, through confluences, upstream or down. */
    ALONG("along the stream");

    private final String words;

    ClearBy(String words) {
        this.words = words;
    }

    /** {@code along the stream}. */
    public String words() {
        return words;
    }
}
