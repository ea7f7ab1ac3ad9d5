package org.wadeplan.geo.crs;

import java.util.Locale;
import java.util.Optional;

/**
 * What a map file says about the coordinate system that it is in: a code, a written definition, or both.
 *
 * @param code such as {@code EPSG:32627}; empty where the file gives none
 * @param definition well-known text (OGC 01-009, its dialect in {@code .prj} files, or ISO 19162); empty where there is
 *     none
 */
public record StatedSystem(Optional<String> code, Optional<String> definition) {

    private static final int LONGEST_SHOWN = 60;

    public StatedSystem {
        if (code.isEmpty() && definition.isEmpty()) {
            throw new IllegalArgumentException("A file that says nothing of its system has no stated system");
        }
    }

    /**
     * What a file states, where it states anything.
     *
     * @param definition kept only where the code is missing or unknown here; blank and {@code undefined} count as none
     */
    public static Optional<StatedSystem> of(Optional<String> code, Optional<String> definition) {
        Optional<String> known = code.filter(name -> KnownSystems.decode(name).isPresent());
        Optional<String> written = definition
                .filter(text -> known.isEmpty())
                .filter(text -> !text.isBlank() && !text.strip().equalsIgnoreCase("undefined"));
        return code.isEmpty() && written.isEmpty() ? Optional.empty() : Optional.of(new StatedSystem(code, written));
    }

    public static StatedSystem code(String code) {
        return new StatedSystem(Optional.of(code.strip().toUpperCase(Locale.ROOT)), Optional.empty());
    }

    public static StatedSystem definition(String text) {
        return new StatedSystem(Optional.empty(), Optional.of(text));
    }

    /** The same by its code, where the definition is that of a published system. */
    public StatedSystem recognised() {
        return Definitions.system(this)
                .flatMap(Described::code)
                .map(StatedSystem::code)
                .orElse(this);
    }

    /** For a sentence: {@code EPSG:32627}, or {@code "North American Albers" (no code)}. */
    public String words() {
        return code.orElseGet(() -> "\"" + name() + "\" (no code)");
    }

    /** What the definition calls the system: its first text in quotes; the code where there is no definition. */
    public String name() {
        String text = definition.orElse("");
        int from = text.indexOf('"');
        int to = text.indexOf('"', from + 1);
        String name = from >= 0 && to > from ? text.substring(from + 1, to) : code.orElse(text.strip());
        return name.length() > LONGEST_SHOWN ? name.substring(0, LONGEST_SHOWN) + "\u2026" : name;
    }
}
