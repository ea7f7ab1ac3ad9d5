package org.wadeplan.geo.crs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Codes of systems and datums by the names under which map files without codes carry them. */
final class PublishedNames {

    private static final PublishedNames ALL = loaded();

    private final Map<String, List<String>> codes = new LinkedHashMap<>();

    private PublishedNames() {}

    /** Codes of the systems of that name, most often one; both projected and geographic. */
    static List<String> systems(String name) {
        List<String> all = new ArrayList<>(ALL.codes.getOrDefault("projected " + plain(name), List.of()));
        all.addAll(ALL.codes.getOrDefault("geographic " + plain(name), List.of()));
        return all;
    }

    /** Codes of the geographic systems on the datum of that name. */
    static List<String> onDatum(String name) {
        return ALL.codes.getOrDefault("datum " + plain(name), List.of());
    }

    /** {@code D_OSGB_1936}, {@code OSGB_1936} and {@code OSGB 1936} are one. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("^d_", "").replaceAll("[^a-z0-9+]", "");
    }

    private static PublishedNames loaded() {
        PublishedNames names = new PublishedNames();
        try (InputStream in = PublishedNames.class.getResourceAsStream("published-names.tsv")) {
            if (in == null) {
                throw new IllegalStateException("published-names.tsv is missing from the program");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            lines.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
                String[] cells = line.split("\t", 3);
                String key = cells[0] + " " + plain(cells[1]);
                String code = "EPSG:" + cells[2];
                List<String> known = names.codes.computeIfAbsent(key, none -> new ArrayList<>());
                if (!known.contains(code)) {
                    known.add(code);
                }
            });
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return names;
    }
}
