package org.wadeplan.geo.io;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.geotools.api.filter.expression.Add;
import org.geotools.api.filter.expression.BinaryExpression;
import org.geotools.api.filter.expression.Divide;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.filter.expression.Function;
import org.geotools.api.filter.expression.Literal;
import org.geotools.api.filter.expression.Multiply;
import org.geotools.api.filter.expression.PropertyName;
import org.geotools.api.filter.expression.Subtract;
import org.wadeplan.geo.io.FilterTerms.NotSupported;

/** The values that a filter compares: columns, numbers, texts, yes and no, and sums of numbers. */
final class FilterValues {

    /** One side of a comparison; empty where it is not known for a feature. */
    @FunctionalInterface
    interface Value {
        Optional<Attribute> of(Feature feature);
    }

    private final Set<String> columns;

    FilterValues(Set<String> columns) {
        this.columns = columns;
    }

    Value of(Expression expression) {
        if (expression instanceof PropertyName property) {
            // The parser writes a full stop in a name as a slash.
            String name = property.getPropertyName().replace('/', '.');
            columns.add(name);
            return feature ->
                    feature.attribute(name).filter(value -> !value.words().isBlank());
        }
        if (expression instanceof Literal literal) {
            Optional<Attribute> value = Optional.of(constant(literal.getValue()));
            return feature -> value;
        }
        if (expression instanceof BinaryExpression sum) {
            return sum(sum);
        }
        if (expression instanceof Function function) {
            throw new NotSupported("the function " + function.getName());
        }
        throw new NotSupported(expression.getClass().getSimpleName());
    }

    private static Attribute constant(Object value) {
        if (value instanceof String text) {
            return Attribute.of(text);
        }
        if (value instanceof Boolean flag) {
            return Attribute.of(flag.booleanValue());
        }
        if (value instanceof Long || value instanceof Integer) {
            return Attribute.of(((Number) value).longValue());
        }
        if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
            return Attribute.of(number.doubleValue());
        }
        throw new NotSupported("a " + value.getClass().getSimpleName().toLowerCase(Locale.ROOT));
    }

    private Value sum(BinaryExpression sum) {
        Value first = of(sum.getExpression1());
        Value second = of(sum.getExpression2());
        return feature -> {
            OptionalDouble one = first.of(feature).map(FilterValues::number).orElse(OptionalDouble.empty());
            OptionalDouble other = second.of(feature).map(FilterValues::number).orElse(OptionalDouble.empty());
            return one.isPresent() && other.isPresent()
                    ? result(sum, one.getAsDouble(), other.getAsDouble())
                    : Optional.empty();
        };
    }

    private static Optional<Attribute> result(BinaryExpression sum, double one, double other) {
        double result;
        if (sum instanceof Add) {
            result = one + other;
        } else if (sum instanceof Subtract) {
            result = one - other;
        } else if (sum instanceof Multiply) {
            result = one * other;
        } else if (sum instanceof Divide) {
            result = one / other;
        } else {
            throw new NotSupported(sum.getClass().getSimpleName());
        }
        return Double.isFinite(result) ? Optional.of(Attribute.of(result)) : Optional.empty();
    }

    /**
     * Below 0 where the first comes first, 0 where both are the same; empty where they cannot be compared. A text is
     * compared with a number by the number that it spells.
     */
    static Optional<Integer> order(Attribute first, Attribute second) {
        if (first instanceof Attribute.Whole one && second instanceof Attribute.Whole other) {
            return Optional.of(Long.compare(one.value(), other.value()));
        }
        if (first instanceof Attribute.Text one && second instanceof Attribute.Text other) {
            return Optional.of(one.value().compareTo(other.value()));
        }
        if (first instanceof Attribute.Flag || second instanceof Attribute.Flag) {
            Optional<Boolean> one = flag(first);
            Optional<Boolean> other = flag(second);
            return one.flatMap(yes -> other.map(also -> Boolean.compare(yes, also)));
        }
        OptionalDouble one = number(first);
        OptionalDouble other = number(second);
        return one.isPresent() && other.isPresent()
                ? Optional.of(Double.compare(one.getAsDouble() + 0.0, other.getAsDouble() + 0.0))
                : Optional.empty();
    }

    private static Optional<Boolean> flag(Attribute value) {
        return switch (value.words().strip().toLowerCase(Locale.ROOT)) {
            case "true", "1", "t", "yes" -> Optional.of(true);
            case "false", "0", "f", "no" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private static OptionalDouble number(Attribute value) {
        if (value instanceof Attribute.Whole whole) {
            return OptionalDouble.of((double) whole.value());
        }
        if (value instanceof Attribute.Decimal decimal) {
            return OptionalDouble.of(decimal.value());
        }
        try {
            double spelled = Double.parseDouble(value.words().strip());
            return Double.isFinite(spelled) ? OptionalDouble.of(spelled) : OptionalDouble.empty();
        } catch (NumberFormatException word) {
            return OptionalDouble.empty();
        }
    }
}
