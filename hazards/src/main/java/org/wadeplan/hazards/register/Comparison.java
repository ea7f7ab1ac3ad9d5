package org.wadeplan.hazards.register;

/** How a number is held against a limit. */
public enum Comparison implements Keyed {
    ABOVE(">", "above"),
    AT_OR_ABOVE(">=", "at or above"),
    BELOW("<", "below"),
    AT_OR_BELOW("<=", "at or below");

    private final String key;
    private final String words;

    Comparison(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public boolean holds(double found, double limit) {
        return switch (this) {
            case ABOVE -> found > limit;
            case AT_OR_ABOVE -> found >= limit;
            case BELOW -> found < limit;
            case AT_OR_BELOW -> found <= limit;
        };
    }

    @Override
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }
}
