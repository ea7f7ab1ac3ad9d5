package org.wadeplan.planner.files;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wadeplan.geo.search.Bounds;
import org.wadeplan.geo.search.ClearBy;
import org.wadeplan.geo.search.ScoreRules;
import org.wadeplan.geo.search.SearchLimits;
import org.wadeplan.geo.search.SearchRules;
import org.wadeplan.planner.round.SearchSettings;

/** The key {@code search} of {@code round.json}: what a search for reaches keeps clear of. All of it may be absent. */
final class SearchJson {

    private static final SearchSettings USUAL = SearchSettings.USUAL;
    private static final Words<ClearBy> CLEAR_BY = Words.of(ClearBy.class);
    private static final Words<Boolean> LAYOUTS = Words.yesNo("end-to-end", "fitted");
    private static final Range DISTANCE_M = Range.of(0, 100_000, "m");
    private static final Range ORDER = Range.of(1, 20, "");
    private static final Range PERCENT = Range.of(0, 100, "%");
    private static final Range WEIGHT = Range.of(0, 1000, "points");

    private SearchJson() {}

    static SearchSettings settings(JsonObject top) {
        if (!top.has("search")) {
            return USUAL;
        }
        JsonObject search = top.object("search");
        SearchSettings settings = new SearchSettings(
                search.has("clearBy") ? search.word("clearBy", CLEAR_BY) : USUAL.clearBy(),
                clearM(search),
                layout(search),
                flag(search, "acrossLines", USUAL.acrossLines()),
                decimal(search, "minGapM", DISTANCE_M, USUAL.minGapM()),
                limits(search),
                search.has("withoutConsent") ? words(search, "withoutConsent") : USUAL.withoutConsent(),
                flag(search, "tidalRuledOut", USUAL.tidalRuledOut()),
                weights(search),
                search.has("best") ? search.integer("best", Range.of(1, 100_000, "")) : USUAL.best(),
                search.has("bestOfWater")
                        ? OptionalInt.of(search.integer("bestOfWater", Range.of(1, 100_000, "")))
                        : USUAL.bestOfWater(),
                search.text("source"));
        search.noteUnknownKeys();
        return settings;
    }

    private static Set<String> words(JsonObject object, String key) {
        Set<String> words = new TreeSet<>();
        object.list(key, Reading::of).forEach(word -> words.add(word.toLowerCase(Locale.ROOT)));
        return words;
    }

    private static boolean flag(JsonObject object, String key, boolean usual) {
        return object.has(key) ? object.flag(key) : usual;
    }

    private static double decimal(JsonObject object, String key, Range range, double usual) {
        return object.has(key) ? object.decimal(key, range) : usual;
    }

    private static Map<String, Double> clearM(JsonObject search) {
        Map<String, Double> distances = new TreeMap<>(USUAL.clearM());
        if (search.has("clearM")) {
            JsonObject given = search.object("clearM");
            given.keys().forEach(kind -> distances.put(kind.toLowerCase(Locale.ROOT), given.decimal(kind, DISTANCE_M)));
        }
        return distances;
    }

    private static SearchRules.Layout layout(JsonObject search) {
        if (search.has("layout") && search.word("layout", LAYOUTS)) {
            return new SearchRules.EndToEnd();
        }
        double usualM = ((SearchRules.Fitted) USUAL.layout()).stepM();
        return new SearchRules.Fitted(decimal(search, "stepM", Range.of(1, 10_000, "m"), usualM));
    }

    private static SearchLimits limits(JsonObject search) {
        if (!search.has("limits")) {
            return USUAL.limits();
        }
        JsonObject limits = search.object("limits");
        SearchLimits made = new SearchLimits(
                bounds(limits, "orderMin", "orderMax", ORDER),
                bounds(limits, "widthMinM", "widthMaxM", Range.WIDTH_M),
                bounds(limits, "slopeMinPercent", "slopeMaxPercent", PERCENT),
                bounds(limits, "walkInMinM", "walkInMaxM", DISTANCE_M),
                flag(limits, "walkInOnConsentedLand", false),
                limits.has("lineKindsRuledOut")
                        ? words(limits, "lineKindsRuledOut")
                        : USUAL.limits().lineKindsRuledOut());
        limits.noteUnknownKeys();
        return made;
    }

    private static Bounds bounds(JsonObject limits, String minKey, String maxKey, Range range) {
        OptionalDouble min =
                limits.has(minKey) ? OptionalDouble.of(limits.decimal(minKey, range)) : OptionalDouble.empty();
        OptionalDouble max =
                limits.has(maxKey) ? OptionalDouble.of(limits.decimal(maxKey, range)) : OptionalDouble.empty();
        if (min.isPresent() && max.isPresent() && min.getAsDouble() > max.getAsDouble()) {
            limits.refuse(
                    minKey,
                    new Fault(
                            "limit-order",
                            minKey + " is above " + maxKey,
                            "a least that is no more than the most",
                            "check both; they may be swapped"));
            return Bounds.NONE;
        }
        return new Bounds(min, max);
    }

    /** Only what each part weighs; when it earns its points stays as usual. */
    private static ScoreRules weights(JsonObject search) {
        if (!search.has("weights")) {
            return USUAL.scores();
        }
        JsonObject weights = search.object("weights");
        ScoreRules usual = USUAL.scores();
        ScoreRules made = new ScoreRules(
                part(weights, "obstacle", usual.clearance()),
                part(weights, "walkIn", usual.walkIn()),
                part(weights, "lengthCertainty", usual.lengthSpread()),
                part(weights, "slope", usual.slope()),
                part(weights, "width", usual.width()),
                weights.text("source"));
        weights.noteUnknownKeys();
        return made;
    }

    private static ScoreRules.Part part(JsonObject weights, String key, ScoreRules.Part usual) {
        return new ScoreRules.Part(decimal(weights, key, WEIGHT, usual.weight()), usual.preference());
    }
}
