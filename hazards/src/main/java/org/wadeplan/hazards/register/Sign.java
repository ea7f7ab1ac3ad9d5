package org.wadeplan.hazards.register;

import java.util.List;
import java.util.Optional;

/**
 * The warning sign that goes with a hazard, always with words.
 *
 * @param code number in ISO 7010, only where it has been confirmed; empty otherwise
 * @param words what the sign means
 */
public record Sign(Optional<String> code, String words) {

    /** ISO 7010:2019 numbers confirmed against public drawings. Others are from memory and are not printed. */
    public static final List<String> CONFIRMED =
            List.of("W001", "W003", "W009", "W011", "W012", "W016", "W021", "W022", "E001", "E003", "P022");

    /** {@code electricity (ISO 7010 W012, verify against the standard)} */
    public String label() {
        return code.map(number -> words + " (ISO 7010 " + number + ", verify against the standard)")
                .orElse(words);
    }
}
