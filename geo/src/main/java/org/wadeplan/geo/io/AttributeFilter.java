package org.wadeplan.geo.io;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.geotools.api.filter.Filter;
import org.geotools.filter.text.cql2.CQLException;
import org.geotools.filter.text.ecql.ECQL;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * A condition on attributes, written in ECQL: {@code FTYPE = 'StreamRiver' AND StreamOrde >= 2}.
 *
 * <p>Comparisons, {@code BETWEEN}, {@code IN}, {@code LIKE}, {@code ILIKE}, {@code IS NULL} and sums, joined by
 * {@code AND}, {@code OR} and {@code NOT}. The logic has three values, as SQL has it (ISO/IEC 9075-2, 8.8): a comparison
 * with a value that is not known is neither true nor false, under {@code NOT} as well, and only what is true is read. A
 * blank text counts as not known.
 */
final class AttributeFilter {

    private static final int LONGEST = 10_000;
    private static final Pattern COLUMN = Pattern.compile("column (\\d+)");

    private final FilterTerms.Condition condition;

    private AttributeFilter(FilterTerms.Condition condition) {
        this.condition = condition;
    }

    /** The filter; or why it cannot be used on this layer. */
    static Checked<AttributeFilter> parse(String text, LayerShape layer, SourcePlace place) {
        try {
            FilterTerms terms = new FilterTerms();
            FilterTerms.Condition condition = terms.condition(parsed(text));
            Set<String> unknown = new LinkedHashSet<>();
            terms.columns().stream()
                    .filter(name -> ColumnMapping.column(layer, name).isEmpty())
                    .forEach(unknown::add);
            return unknown.isEmpty()
                    ? Checked.of(new AttributeFilter(condition))
                    : Checked.failed(unknown.stream()
                            .map(name -> unknownColumn(name, layer, place))
                            .toList());
        } catch (CQLException broken) {
            return Checked.failed(broken(text, broken, place));
        } catch (FilterTerms.NotSupported other) {
            return Checked.failed(notSupported(other, place));
        }
    }

    private static Filter parsed(String text) throws CQLException {
        if (text.isBlank() || text.length() > LONGEST) {
            throw new CQLException("column 1");
        }
        try {
            return ECQL.toFilter(text);
        } catch (StackOverflowError tooDeep) {
            // The parser calls itself for each bracket: thousands of them are no filter that a person wrote.
            throw new CQLException("column 1");
        }
    }

    /** What the filter says of a feature, by its attributes as the file has them. */
    Truth about(Feature feature) {
        return condition.about(feature);
    }

    private static Problem unknownColumn(String name, LayerShape layer, SourcePlace place) {
        Optional<String> nearest = layer.fields().stream()
                .map(Field::name)
                .filter(known -> known.toLowerCase(Locale.ROOT)
                        .startsWith(name.toLowerCase(Locale.ROOT).substring(0, Math.min(3, name.length()))))
                .min(Comparator.naturalOrder());
        return Problem.error(
                "filter-column-unknown",
                place,
                "the filter asks for \"" + name + "\", and the layer " + layer.name() + " has no such column",
                ColumnMapping.columnsOf(layer),
                nearest.map(known -> "write " + known + " if that is meant").orElse("correct the name"));
    }

    private static Problem broken(String text, CQLException broken, SourcePlace place) {
        Matcher column = COLUMN.matcher(String.valueOf(broken.getMessage()));
        String from = column.find() ? " from character " + column.group(1) + " on" : "";
        return Problem.error(
                "filter-broken",
                place,
                "the filter \"" + text + "\" is not understood" + from,
                "a condition in ECQL, such as FTYPE = 'StreamRiver' AND StreamOrde >= 2",
                "put texts in single quotes, and column names with other letters than a to z in double quotes");
    }

    private static Problem notSupported(FilterTerms.NotSupported other, SourcePlace place) {
        return Problem.error(
                "filter-not-supported",
                place,
                "the filter uses " + other.what() + ", which is not done here",
                "columns compared with numbers or texts (=, <>, <, <=, >, >=, BETWEEN, IN, LIKE, ILIKE, IS NULL), joined"
                        + " by AND, OR and NOT",
                "say it with such comparisons; dates are texts here: seen >= '2027-09-06'");
    }
}
