package org.wadeplan.geo.io;

/** One value in the table behind a map layer. Unknown is no value at all: the feature lacks the attribute. */
public sealed interface Attribute {

    /** The value as a person would type it. */
    String words();

    record Text(String value) implements Attribute {
        @Override
        public String words() {
            return value;
        }
    }

    record Whole(long value) implements Attribute {
        @Override
        public String words() {
            return Long.toString(value);
        }
    }

    /** A number with decimals, always finite. */
    record Decimal(double value) implements Attribute {
        public Decimal {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("An unknown number is left out, not written as " + value);
            }
        }

        @Override
        public String words() {
            return Double.toString(value);
        }
    }

    record Flag(boolean value) implements Attribute {
        @Override
        public String words() {
            return Boolean.toString(value);
        }
    }

    static Attribute of(String value) {
        return new Text(value);
    }

    static Attribute of(long value) {
        return new Whole(value);
    }

    static Attribute of(double value) {
        return new Decimal(value);
    }

    static Attribute of(boolean value) {
        return new Flag(value);
    }
}
