package org.wadeplan.geo.bench;

/** The steps that are timed. */
enum Step {
    LOAD("load from GeoPackage"),
    INDEX("index the lines"),
    SNAP("(a) snap 10,000 places"),
    CUT("(b) cut reaches and stations"),
    MEET("(c) find confluences"),
    CLEAR("(c) keep 50 m clear of them");

    private final String words;

    Step(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
