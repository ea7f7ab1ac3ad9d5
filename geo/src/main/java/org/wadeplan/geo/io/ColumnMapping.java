package org.wadeplan.geo.io;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * How the columns of somebody's map file are called here. Names match in any mix of upper and lower case.
 *
 * @param columns the file's column by our name: {@code code} by {@code COMID}
 * @param sameForAll a value that holds for every feature, by our name
 * @param kindWords our word by the file's, for the column {@code kind}: {@code pipe} by {@code 428}
 * @param crs the coordinate system, where a person states it because the file does not or is wrong
 */
public record ColumnMapping(
        Map<String, String> columns,
        Map<String, String> sameForAll,
        Map<String, String> kindWords,
        Optional<StatedSystem> crs) {

    /** The column that says what kind of water a line is. */
    public static final String KIND = "kind";

    /** Everything under the file's own names. */
    public static final ColumnMapping NONE = new ColumnMapping(Map.of(), Map.of(), Map.of(), Optional.empty());

    public ColumnMapping {
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        sameForAll = Collections.unmodifiableMap(new LinkedHashMap<>(sameForAll));
        Map<String, String> words = new LinkedHashMap<>();
        kindWords.forEach((theirs, ours) -> words.put(plain(theirs), ours));
        kindWords = Collections.unmodifiableMap(words);
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    /** An error for every column that the layer does not have. */
    List<Problem> missing(LayerShape layer, SourcePlace settings) {
        List<Problem> problems = new ArrayList<>();
        columns.forEach((ours, theirs) -> {
            if (column(layer, theirs).isEmpty()) {
                problems.add(Problem.error(
                        "mapping-column-unknown",
                        settings,
                        "the layer " + layer.name() + " has no column \"" + theirs + "\", which " + ours
                                + " is to be read from",
                        columnsOf(layer),
                        "write the name of the column that holds it"));
            }
        });
        return problems;
    }

    /** For a sentence: {@code one of its columns COMID, FTYPE}. */
    static String columnsOf(LayerShape layer) {
        return layer.fields().isEmpty()
                ? "nothing: the layer has no columns"
                : "one of its columns "
                        + layer.fields().stream().map(Field::name).collect(Collectors.joining(", "));
    }

    static Optional<Field> column(LayerShape layer, String name) {
        return layer.fields().stream()
                .filter(field -> field.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** The layer as its mapped features have it: our columns first, then the file's others. */
    LayerShape apply(LayerShape layer) {
        List<Field> fields = new ArrayList<>();
        columns.forEach((ours, theirs) -> column(layer, theirs)
                .ifPresent(field -> fields.add(
                        new Field(ours, ours.equals(KIND) && !kindWords.isEmpty() ? Field.Type.TEXT : field.type()))));
        sameForAll.keySet().forEach(ours -> fields.add(Field.text(ours)));
        layer.fields().stream().filter(field -> !isOurs(field.name())).forEach(fields::add);
        return new LayerShape(layer.name(), layer.crs(), layer.kind(), fields);
    }

    Feature apply(Feature feature) {
        if (columns.isEmpty() && sameForAll.isEmpty() && kindWords.isEmpty()) {
            return feature;
        }
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        columns.forEach((ours, theirs) ->
                feature.attribute(theirs).ifPresent(value -> attributes.put(ours, translated(ours, value))));
        sameForAll.forEach((ours, value) -> attributes.put(ours, Attribute.of(value)));
        feature.attributes().forEach((name, value) -> {
            if (!isOurs(name)) {
                attributes.put(name, translated(name, value));
            }
        });
        return new Feature(feature.id(), feature.geometry(), attributes);
    }

    /** Whether a column of the file is hidden by one of the mapping's own. */
    private boolean isOurs(String name) {
        return columns.keySet().stream().anyMatch(name::equalsIgnoreCase)
                || sameForAll.keySet().stream().anyMatch(name::equalsIgnoreCase);
    }

    private Attribute translated(String ours, Attribute value) {
        String word = ours.equalsIgnoreCase(KIND) ? kindWords.get(plain(value.words())) : null;
        return word == null ? value : Attribute.of(word);
    }
}
