package org.wadeplan.hazards.assess;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.hazards.register.Attribute;

/**
 * What is known of the water, the weather and the site on a visit. Everything may be missing, and missing is not zero.
 *
 * @param numbers given numbers by attribute, finite
 * @param features named things at the site: true where present, false where someone looked and it is not there
 */
public record Conditions(Map<Attribute, Double> numbers, SortedMap<String, Boolean> features) {

    public Conditions {
        Map<Attribute, Double> ordered = new EnumMap<>(Attribute.class);
        ordered.putAll(numbers);
        ordered.forEach((attribute, number) -> {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException(attribute + " must be a finite number or left out");
            }
        });
        numbers = Collections.unmodifiableMap(ordered);
        features = Collections.unmodifiableSortedMap(new TreeMap<>(features));
    }

    public static Conditions unknown() {
        return new Conditions(Map.of(), new TreeMap<>());
    }

    public Conditions with(Attribute attribute, double number) {
        Map<Attribute, Double> more = new EnumMap<>(Attribute.class);
        more.putAll(numbers);
        more.put(attribute, number);
        return new Conditions(more, features);
    }

    public Conditions with(String feature, boolean present) {
        SortedMap<String, Boolean> more = new TreeMap<>(features);
        more.put(feature, present);
        return new Conditions(numbers, more);
    }

    /** True where present, false where looked for and absent, empty where nobody has said. */
    public Optional<Boolean> feature(String name) {
        return Optional.ofNullable(features.get(name));
    }

    /** The number as given, or as it follows from others. */
    public Reading reading(Attribute attribute) {
        OptionalDouble given = given(attribute);
        return given.isPresent() ? new Reading.Known(given.getAsDouble(), "") : DerivedReading.of(attribute, this);
    }

    OptionalDouble given(Attribute attribute) {
        Double number = numbers.get(attribute);
        return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
    }
}
