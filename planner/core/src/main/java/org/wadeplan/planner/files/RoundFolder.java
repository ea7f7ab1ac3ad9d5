package org.wadeplan.planner.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Where each part of a round stands on disk. Files with personal facts, whose names end in {@code _private}, are no part
 * of it, so nothing can read them through here.
 *
 * @param folder the round folder
 * @param names names of files by what they hold, where they differ from the usual ones
 */
record RoundFolder(Path folder, Map<String, String> names) {

    static final String STREAMS = "streams";
    static final String CATCHMENTS = "catchments";
    static final String PARCELS = "parcels";
    static final String METHOD_TABLE = "methodTable";
    static final String HAZARDS = "hazards";

    /** Everything that a round may hold, in the order in which it is read. */
    static final List<String> KNOWN = List.of(
            STREAMS,
            CATCHMENTS,
            PARCELS,
            METHOD_TABLE,
            HAZARDS,
            "waters",
            "sites",
            "past_visits",
            "travel",
            "methods",
            "method_parts",
            "kit_needs",
            "kit_sets",
            "store",
            "certificates",
            "people",
            "crew_days",
            "permits",
            "consents",
            "pests",
            "water_pests",
            "treatments",
            "decon_steps",
            "decon_resources",
            "barriers",
            "tides",
            "site_hazards",
            "forecast",
            "care",
            "pack_seconds");

    private static final Map<String, String> USUAL = Map.of(
            STREAMS, "streams.gpkg",
            CATCHMENTS, "catchments.gpkg",
            PARCELS, "parcels.gpkg",
            METHOD_TABLE, "method.dmn",
            HAZARDS, "hazards.json");

    String nameOf(String part) {
        return names.getOrDefault(part, USUAL.getOrDefault(part, part + ".csv"));
    }

    Path path(String part) {
        return folder.resolve(nameOf(part));
    }

    boolean has(String part) {
        return Files.exists(path(part));
    }

    /** Whether a name stays in the folder and is not that of a private file. */
    static boolean inside(String name) {
        try {
            Path path = Path.of(name).normalize();
            Path last = path.getFileName();
            boolean leaves = path.isAbsolute() || path.startsWith("..") || last == null;
            return !leaves && !last.toString().contains("_private");
        } catch (InvalidPathException impossible) {
            return false;
        }
    }
}
