package org.wadeplan.planner.files;

import static org.wadeplan.planner.files.NumberCell.quoted;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The words that a column allows, each with what it means. */
final class Words<T> {

    private final Map<String, T> meanings;

    private Words(Map<String, T> meanings) {
        this.meanings = Collections.unmodifiableMap(meanings);
    }

    /** Each constant under its name in lower case with hyphens: {@code clean-dry}. */
    static <E extends Enum<E>> Words<E> of(Class<E> type) {
        return of(type, constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Each constant under a word of its own. */
    static <E extends Enum<E>> Words<E> of(Class<E> type, Function<E, String> word) {
        Map<String, E> meanings = new LinkedHashMap<>();
        Arrays.stream(type.getEnumConstants()).forEach(constant -> meanings.put(word.apply(constant), constant));
        return new Words<>(meanings);
    }

    /** Things that carry their own word. */
    static <T> Words<T> named(List<T> things, Function<T, String> word) {
        Map<String, T> meanings = new LinkedHashMap<>();
        things.forEach(thing -> meanings.put(word.apply(thing), thing));
        return new Words<>(meanings);
    }

    /** Words that mean themselves. */
    static Words<String> plain(String... words) {
        Map<String, String> meanings = new LinkedHashMap<>();
        List.of(words).forEach(word -> meanings.put(word, word));
        return new Words<>(meanings);
    }

    /** Two words, the first of which means true. */
    static Words<Boolean> yesNo(String yes, String no) {
        Map<String, Boolean> meanings = new LinkedHashMap<>();
        meanings.put(yes, true);
        meanings.put(no, false);
        return new Words<>(meanings);
    }

    /** Upper and lower case are the same. */
    Reading<T> read(String text) {
        for (Map.Entry<String, T> entry : meanings.entrySet()) {
            if (entry.getKey().equalsIgnoreCase(text)) {
                return Reading.of(entry.getValue());
            }
        }
        Optional<String> nearest = NearestWord.of(text, meanings.keySet());
        return Reading.fault(
                "word-unknown",
                quoted(text) + " is not a word known here"
                        + nearest.map(word -> "; nearest is " + word).orElse(""),
                String.join(", ", meanings.keySet()),
                nearest.map(word -> "write " + word + " if that is meant").orElse("choose one of them"));
    }

    /** What stands in for a value in a row that is dropped anyway. */
    T any() {
        return meanings.values().iterator().next();
    }

    static Reading<Boolean> flag(String text) {
        if (text.equalsIgnoreCase("true") || text.equalsIgnoreCase("false")) {
            return Reading.of(text.equalsIgnoreCase("true"));
        }
        String remedy =
                switch (text.toLowerCase(Locale.ROOT)) {
                    case "yes", "y", "1", "x" -> "write true";
                    case "no", "n", "0" -> "write false";
                    default -> "write true or false";
                };
        return Reading.fault("flag-form", quoted(text) + " is neither true nor false", "true, false", remedy);
    }
}
