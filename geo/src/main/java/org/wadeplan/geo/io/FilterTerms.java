package org.wadeplan.geo.io;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import org.geotools.api.filter.And;
import org.geotools.api.filter.BinaryComparisonOperator;
import org.geotools.api.filter.ExcludeFilter;
import org.geotools.api.filter.Filter;
import org.geotools.api.filter.IncludeFilter;
import org.geotools.api.filter.Not;
import org.geotools.api.filter.Or;
import org.geotools.api.filter.PropertyIsBetween;
import org.geotools.api.filter.PropertyIsEqualTo;
import org.geotools.api.filter.PropertyIsGreaterThan;
import org.geotools.api.filter.PropertyIsGreaterThanOrEqualTo;
import org.geotools.api.filter.PropertyIsLessThan;
import org.geotools.api.filter.PropertyIsLessThanOrEqualTo;
import org.geotools.api.filter.PropertyIsLike;
import org.geotools.api.filter.PropertyIsNotEqualTo;
import org.geotools.api.filter.PropertyIsNull;

/** Turns a parsed filter into conditions with three answers, and gathers the columns that it asks for. */
final class FilterTerms {

    /** What a filter, or a part of one, says of a feature. */
    @FunctionalInterface
    interface Condition {
        Truth about(Feature feature);
    }

    /** Names what a filter asks for that is not done here; never leaves the reading of a filter. */
    static final class NotSupported extends RuntimeException {

        private final String what;

        NotSupported(String what) {
            super(what, null, false, false);
            this.what = what;
        }

        String what() {
            return what;
        }
    }

    private final Set<String> columns = new LinkedHashSet<>();
    private final FilterValues values = new FilterValues(columns);

    /** Every column that the conditions ask for, as they were written. */
    Set<String> columns() {
        return columns;
    }

    Condition condition(Filter filter) {
        if (filter instanceof And and) {
            List<Condition> parts =
                    and.getChildren().stream().map(this::condition).toList();
            return feature -> parts.stream().map(part -> part.about(feature)).reduce(Truth.TRUE, Truth::and);
        }
        if (filter instanceof Or or) {
            List<Condition> parts =
                    or.getChildren().stream().map(this::condition).toList();
            return feature -> parts.stream().map(part -> part.about(feature)).reduce(Truth.FALSE, Truth::or);
        }
        if (filter instanceof Not not) {
            Condition inner = condition(not.getFilter());
            return feature -> inner.about(feature).not();
        }
        if (filter instanceof IncludeFilter || filter instanceof ExcludeFilter) {
            Truth always = Truth.of(filter instanceof IncludeFilter);
            return feature -> always;
        }
        return single(filter);
    }

    private Condition single(Filter filter) {
        if (filter instanceof PropertyIsNull missing) {
            FilterValues.Value value = values.of(missing.getExpression());
            return feature -> Truth.of(value.of(feature).isEmpty());
        }
        if (filter instanceof PropertyIsLike like) {
            return like(like);
        }
        if (filter instanceof PropertyIsBetween between) {
            FilterValues.Value value = values.of(between.getExpression());
            Condition above = comparison(value, values.of(between.getLowerBoundary()), order -> order >= 0);
            Condition below = comparison(value, values.of(between.getUpperBoundary()), order -> order <= 0);
            return feature -> above.about(feature).and(below.about(feature));
        }
        if (filter instanceof BinaryComparisonOperator comparison) {
            return comparison(
                    values.of(comparison.getExpression1()), values.of(comparison.getExpression2()), wanted(comparison));
        }
        throw new NotSupported(nameOf(filter));
    }

    /** {@code INTERSECTS} for the class that stands for it. */
    private static String nameOf(Filter filter) {
        String name = filter.getClass().getSimpleName().replaceAll("(Impl|Filter)+$", "");
        return name.equals("Fid") ? "a list of feature ids" : name.toUpperCase(Locale.ROOT);
    }

    private static IntPredicate wanted(BinaryComparisonOperator comparison) {
        if (comparison instanceof PropertyIsEqualTo) {
            return order -> order == 0;
        }
        if (comparison instanceof PropertyIsNotEqualTo) {
            return order -> order != 0;
        }
        if (comparison instanceof PropertyIsLessThan) {
            return order -> order < 0;
        }
        if (comparison instanceof PropertyIsLessThanOrEqualTo) {
            return order -> order <= 0;
        }
        if (comparison instanceof PropertyIsGreaterThan) {
            return order -> order > 0;
        }
        if (comparison instanceof PropertyIsGreaterThanOrEqualTo) {
            return order -> order >= 0;
        }
        throw new NotSupported(nameOf(comparison));
    }

    private static Condition comparison(FilterValues.Value first, FilterValues.Value second, IntPredicate wanted) {
        return feature -> {
            Optional<Attribute> one = first.of(feature);
            Optional<Attribute> other = second.of(feature);
            return one.isEmpty() || other.isEmpty()
                    ? Truth.UNKNOWN
                    : FilterValues.order(one.get(), other.get())
                            .map(order -> Truth.of(wanted.test(order)))
                            .orElse(Truth.UNKNOWN);
        };
    }

    private Condition like(PropertyIsLike like) {
        FilterValues.Value value = values.of(like.getExpression());
        StringBuilder regex = new StringBuilder();
        String pattern = like.getLiteral();
        for (int i = 0; i < pattern.length(); i++) {
            String letter = pattern.substring(i, i + 1);
            if (letter.equals(like.getEscape()) && i + 1 < pattern.length()) {
                i++;
                regex.append(Pattern.quote(pattern.substring(i, i + 1)));
            } else {
                regex.append(
                        letter.equals(like.getWildCard())
                                ? ".*"
                                : letter.equals(like.getSingleChar()) ? "." : Pattern.quote(letter));
            }
        }
        int letters = like.isMatchingCase() ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
        Pattern wanted = Pattern.compile(regex.toString(), letters | Pattern.DOTALL);
        return feature -> value.of(feature)
                .map(found -> Truth.of(wanted.matcher(found.words()).matches()))
                .orElse(Truth.UNKNOWN);
    }
}
