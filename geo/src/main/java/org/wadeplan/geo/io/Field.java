package org.wadeplan.geo.io;

/**
 * A column of a map layer.
 *
 * @param name as the file spells it
 * @param type what its values are
 */
public record Field(String name, Type type) {

    /** What a column holds. */
    public enum Type {
        TEXT,
        WHOLE,
        DECIMAL,
        FLAG
    }

    public static Field text(String name) {
        return new Field(name, Type.TEXT);
    }

    public static Field whole(String name) {
        return new Field(name, Type.WHOLE);
    }

    public static Field decimal(String name) {
        return new Field(name, Type.DECIMAL);
    }

    public static Field flag(String name) {
        return new Field(name, Type.FLAG);
    }
}
