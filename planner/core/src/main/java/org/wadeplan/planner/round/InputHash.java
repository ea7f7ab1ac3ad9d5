package org.wadeplan.planner.round;

import java.util.SortedMap;

/**
 * What the plan was made from.
 *
 * @param whole SHA-256 over all files, 64 hexadecimal characters
 * @param byFile SHA-256 of each file, by name
 */
public record InputHash(String whole, SortedMap<String, String> byFile) {

    /** The first ten characters: enough for a page footer. */
    public String brief() {
        return whole.substring(0, 10);
    }
}
