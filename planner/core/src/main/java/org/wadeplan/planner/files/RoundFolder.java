package org.wadeplan.planner.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wadeplan.geo.io.LayerQuery;

/**
 * Where each part of a round stands on disk. Files with personal facts, whose names end in {@code _private}, are no part
 * of it, so nothing can read them through here.
 *
 * @param folder the round folder
 * @param names names of files by what they hold, where they differ from the usual ones; that of a GeoPackage may be
 *     followed by a layer, {@code rivers.gpkg#main}
 * @param settings how to read its map layers
 */
record RoundFolder(Path folder, Map<String, String> names, LayerSettings settings) {

    private static final Pattern WITH_LAYER = Pattern.compile("(?i)(.*\\.gpkg)#(.+)");

    static final String STREAMS = "streams";
    static final String CATCHMENTS = "catchments";
    static final String PARCELS = "parcels";
    static final String ROADS = "roads";
    static final String ELEVATION = "elevation";
    static final String METHOD_TABLE = "methodTable";
    static final String HAZARDS = "hazards";

    /** Everything that a round may hold, in the order in which it is read. */
    static final List<String> KNOWN = List.of(
            STREAMS,
            CATCHMENTS,
            PARCELS,
            ROADS,
            ELEVATION,
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
            "depths",
            "site_hazards",
            "forecast",
            "care",
            "pack_seconds",
            "voltage_ceilings",
            "gear_classes",
            "decon_rules",
            "agreed_week");

    /** What people did, in the order in which it is read: it changes by the hour, and no plan is made from it. */
    static final List<String> LOGS = List.of("baths", "cleanings", "load_ticks");

    private static final Map<String, String> USUAL = Map.of(
            STREAMS, "streams.gpkg",
            CATCHMENTS, "catchments.gpkg",
            PARCELS, "parcels.gpkg",
            ROADS, "roads.gpkg",
            ELEVATION, "elevation.tif",
            METHOD_TABLE, "method.dmn",
            HAZARDS, "hazards.json");

    RoundFolder(Path folder, Map<String, String> names) {
        this(folder, names, LayerSettings.NONE);
    }

    /** The name of the file, without a layer. */
    String nameOf(String part) {
        return fileOf(stated(part));
    }

    private String stated(String part) {
        return names.getOrDefault(part, USUAL.getOrDefault(part, part + ".csv"));
    }

    private static String fileOf(String stated) {
        Matcher layer = WITH_LAYER.matcher(stated);
        return layer.matches() ? layer.group(1) : stated;
    }

    /** What to read of a map file. */
    LayerQuery query(String part) {
        Matcher layer = WITH_LAYER.matcher(stated(part));
        return settings.query(part, layer.matches() ? Optional.of(layer.group(2)) : Optional.empty());
    }

    Path path(String part) {
        return folder.resolve(nameOf(part));
    }

    boolean has(String part) {
        return Files.exists(path(part));
    }

    /** Whether a part that a round may do without is there, or should be because round.json names it. */
    boolean wants(String part) {
        return names.containsKey(part) || has(part);
    }

    /** Whether a name stays in the folder and is not that of a private file. */
    static boolean inside(String name) {
        try {
            Path path = Path.of(fileOf(name)).normalize();
            Path last = path.getFileName();
            boolean leaves = path.isAbsolute() || path.startsWith("..") || last == null;
            return !leaves && !last.toString().contains("_private");
        } catch (InvalidPathException impossible) {
            return false;
        }
    }
}
