package org.wadeplan.hazards.assess;

/** What a score asks for. Bands are cut from the score, so that a band can never contradict the order. */
public enum Band {
    A("act before anything else", 1),
    B("act", -1),
    C("keep in mind", -3),
    D("note", Integer.MIN_VALUE);

    private final String words;
    private final int fromLog10;

    Band(String words, int fromLog10) {
        this.words = words;
        this.fromLog10 = fromLog10;
    }

    static Band of(int log10) {
        for (Band band : values()) {
            if (log10 >= band.fromLog10) {
                return band;
            }
        }
        return D;
    }

    public String words() {
        return words;
    }
}
