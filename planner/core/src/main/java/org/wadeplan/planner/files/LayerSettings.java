package org.wadeplan.planner.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.ColumnMapping;
import org.wadeplan.geo.io.LayerQuery;
import org.wadeplan.geo.io.LineKind;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.terrain.GridHints;

/**
 * The keys {@code mappings}, {@code filters} and {@code elevation} of {@code round.json}: how to read somebody else's map layers.
 *
 * @param mappings by part of the round; parts may be missing
 * @param filters ECQL by part of the round; parts may be missing
 * @param elevation what a person says about the grid of elevations
 */
record LayerSettings(Map<String, ColumnMapping> mappings, Map<String, String> filters, GridHints elevation) {

    static final LayerSettings NONE = new LayerSettings(Map.of(), Map.of(), GridHints.NONE);

    /** Our columns of each map layer; the first tells features apart. */
    static final Map<String, List<String>> COLUMNS = Map.of(
            RoundFolder.STREAMS, List.of("code", "name", "catchment", "flow", ColumnMapping.KIND),
            RoundFolder.CATCHMENTS, List.of("code", "name"),
            RoundFolder.PARCELS, List.of("parcel", "consent_status"),
            RoundFolder.ROADS, List.of("road", ColumnMapping.KIND));

    private static final String KIND_WORDS = "kindWords";
    private static final String CRS = "crs";
    private static final String ALL = "all";

    private static final Words<LineKind> KINDS = Words.of(LineKind.class);

    /** What to read of a part, where its file is named {@code FILE.gpkg} or {@code FILE.gpkg#LAYER}. */
    LayerQuery query(String part, Optional<String> layer) {
        return new LayerQuery(
                part,
                layer,
                mappings.getOrDefault(part, ColumnMapping.NONE),
                Optional.ofNullable(filters.get(part)),
                Optional.ofNullable(COLUMNS.get(part)).map(columns -> columns.get(0)),
                SourcePlace.file(RoundJson.FILE));
    }

    static LayerSettings read(JsonObject top) {
        return new LayerSettings(mappings(top), filters(top), elevation(top));
    }

    private static GridHints elevation(JsonObject top) {
        if (!top.has(RoundFolder.ELEVATION)) {
            return GridHints.NONE;
        }
        JsonObject object = top.object(RoundFolder.ELEVATION);
        GridHints hints = new GridHints(
                object.has(CRS) ? Optional.of(object.text(CRS)) : Optional.empty(),
                object.has("verticalStepM")
                        ? OptionalDouble.of(object.decimal("verticalStepM", Range.of(0.001, 100, "m")))
                        : OptionalDouble.empty(),
                object.has("datum") ? Optional.of(object.text("datum")) : Optional.empty());
        object.text("source");
        object.noteUnknownKeys();
        return hints;
    }

    private static Map<String, String> filters(JsonObject top) {
        Map<String, String> filters = new LinkedHashMap<>();
        if (top.has("filters")) {
            JsonObject object = top.object("filters");
            for (String part : object.keys()) {
                if (COLUMNS.containsKey(part)) {
                    filters.put(part, object.text(part));
                }
            }
            COLUMNS.keySet().stream().sorted().forEach(object::has);
            object.noteUnknownKeys();
        }
        return filters;
    }

    private static Map<String, ColumnMapping> mappings(JsonObject top) {
        Map<String, ColumnMapping> mappings = new LinkedHashMap<>();
        if (top.has("mappings")) {
            JsonObject object = top.object("mappings");
            for (String part : object.keys()) {
                if (COLUMNS.containsKey(part)) {
                    mappings.put(part, mapping(object.object(part), COLUMNS.get(part)));
                }
            }
            COLUMNS.keySet().stream().sorted().forEach(object::has);
            object.noteUnknownKeys();
        }
        return mappings;
    }

    private static ColumnMapping mapping(JsonObject object, List<String> ours) {
        Map<String, String> columns = new LinkedHashMap<>();
        Map<String, String> sameForAll = new LinkedHashMap<>();
        for (String column : ours) {
            if (!object.has(column)) {
                continue;
            }
            if (object.isObject(column)) {
                JsonObject constant = object.object(column);
                sameForAll.put(column, constant.text(ALL));
                constant.noteUnknownKeys();
            } else {
                columns.put(column, object.text(column));
            }
        }
        Map<String, String> kindWords = new LinkedHashMap<>();
        if (ours.contains(ColumnMapping.KIND) && object.has(KIND_WORDS)) {
            JsonObject words = object.object(KIND_WORDS);
            words.keys()
                    .forEach(word -> kindWords.put(word, words.word(word, KINDS).word()));
        }
        Optional<StatedSystem> crs =
                object.has(CRS) ? Optional.of(StatedSystem.code(object.text(CRS))) : Optional.empty();
        object.noteUnknownKeys();
        return new ColumnMapping(columns, sameForAll, kindWords, crs);
    }
}
