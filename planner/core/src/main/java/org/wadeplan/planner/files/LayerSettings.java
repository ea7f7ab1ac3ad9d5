package org.wadeplan.planner.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.ColumnMapping;
import org.wadeplan.geo.io.LayerQuery;
import org.wadeplan.geo.io.LineKind;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * The keys {@code mappings} and {@code filters} of {@code round.json}: how to read somebody else's map layers.
 *
 * @param mappings by part of the round; parts may be missing
 * @param filters ECQL by part of the round; parts may be missing
 */
record LayerSettings(Map<String, ColumnMapping> mappings, Map<String, String> filters) {

    static final LayerSettings NONE = new LayerSettings(Map.of(), Map.of());

    /** Our columns of each map layer; the first tells features apart. */
    static final Map<String, List<String>> COLUMNS = Map.of(
            RoundFolder.STREAMS, List.of("code", "name", "catchment", "flow", ColumnMapping.KIND),
            RoundFolder.CATCHMENTS, List.of("code", "name"),
            RoundFolder.PARCELS, List.of("parcel", "consent_status"));

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
        return new LayerSettings(mappings(top), filters(top));
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
