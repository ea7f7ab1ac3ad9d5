package org.wadeplan.geo.io;

import java.util.Optional;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * What is wanted of a map file.
 *
 * @param part what the layer holds, which is its name where nothing else is said: {@code streams}
 * @param layer the layer of a GeoPackage, where a person names it
 * @param mapping how its columns are called here
 * @param filter which features to read, in ECQL over the file's own columns: {@code FTYPE = 'StreamRiver'}
 * @param codeColumn the column that tells features apart; where the layer has none, the feature's id stands in
 * @param settings where a person wrote the mapping and the filter, for problems
 */
public record LayerQuery(
        String part,
        Optional<String> layer,
        ColumnMapping mapping,
        Optional<String> filter,
        Optional<String> codeColumn,
        SourcePlace settings) {

    /** A whole layer as it is. */
    public static LayerQuery of(String layer) {
        return new LayerQuery(
                layer,
                Optional.of(layer),
                ColumnMapping.NONE,
                Optional.empty(),
                Optional.empty(),
                SourcePlace.file("round.json"));
    }
}
