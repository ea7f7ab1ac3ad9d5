package org.wadeplan.hazards.register;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * The members of one JSON object, with a list of problems shared by the whole file. A member that is missing or wrong is
 * noted and read as blank or empty, so that reading goes on.
 */
final class Fields {

    private final JsonNode node;
    private final SourcePlace place;
    private final String path;
    private final List<Problem> problems;

    private Fields(JsonNode node, SourcePlace place, String path, List<Problem> problems) {
        this.node = node;
        this.place = place;
        this.path = path;
        this.problems = problems;
    }

    static Fields of(String file, JsonNode root) {
        return new Fields(root, SourcePlace.file(file), "", new ArrayList<>());
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** Members with other names are a slip of the pen that would go unseen. */
    void only(Set<String> allowed) {
        node.fieldNames().forEachRemaining(name -> {
            if (!allowed.contains(name)) {
                error(
                        "register-unknown-member",
                        name,
                        "the member \"" + name + "\" is not known",
                        String.join(", ", new TreeSet<>(allowed)),
                        "correct the name or take it out");
            }
        });
    }

    boolean has(String name) {
        return node.has(name);
    }

    /** The text as it stands, blank where there is none; notes nothing. */
    String peek(String name) {
        return node.path(name).asText("");
    }

    String text(String name) {
        JsonNode found = node.path(name);
        if (found.isTextual() && !found.asText().isBlank()) {
            return found.asText().strip();
        }
        error("register-missing", name, name + " is missing or blank", "some text", "write it");
        return "";
    }

    Optional<String> optionalText(String name) {
        return has(name) ? Optional.of(text(name)).filter(text -> !text.isEmpty()) : Optional.empty();
    }

    OptionalInt wholeNumber(String name, int least, int most) {
        JsonNode found = node.path(name);
        if (found.isInt() && found.asInt() >= least && found.asInt() <= most) {
            return OptionalInt.of(found.asInt());
        }
        error(
                "register-number",
                name,
                name + " is " + shown(found),
                "a whole number from " + least + " to " + most,
                "write one");
        return OptionalInt.empty();
    }

    OptionalDouble number(String name) {
        JsonNode found = node.path(name);
        if (found.isNumber() && Double.isFinite(found.asDouble())) {
            return OptionalDouble.of(found.asDouble());
        }
        error("register-number", name, name + " is " + shown(found), "a number", "write it with a point");
        return OptionalDouble.empty();
    }

    /** A word of a fixed vocabulary. */
    <T extends Keyed> Optional<T> word(String name, T[] vocabulary) {
        Optional<T> word = Keyed.find(vocabulary, peek(name));
        if (word.isEmpty()) {
            error(
                    "register-word",
                    name,
                    name + " is " + shown(node.path(name)),
                    String.join(", ", Keyed.keys(vocabulary)),
                    "use one of these words");
        }
        return word;
    }

    /** The objects of a list, each known in problems by its own member {@code label} or its number. */
    List<Fields> children(String name, String label) {
        return elements(node.path(name), name).stream()
                .map(element -> element.labelled(label))
                .toList();
    }

    List<Fields> children(String name) {
        return elements(node.path(name), name);
    }

    /** The objects of a list of lists. */
    List<List<Fields>> lines(String name) {
        List<List<Fields>> lines = new ArrayList<>();
        JsonNode outer = node.path(name);
        for (int i = 0; i < outer.size(); i++) {
            lines.add(elements(outer.path(i), name + "[" + (i + 1) + "]"));
        }
        return lines;
    }

    Optional<Fields> child(String name) {
        return has(name) ? Optional.of(new Fields(node.path(name), place, inside(name), problems)) : Optional.empty();
    }

    void error(String code, String name, String found, String expected, String remedy) {
        problems.add(Problem.error(code, place.column(inside(name)), found, expected, remedy));
    }

    void warning(String code, String name, String found, String expected, String remedy) {
        problems.add(Problem.warning(code, place.column(inside(name)), found, expected, remedy));
    }

    private Fields labelled(String label) {
        String name = peek(label).isBlank() ? path : peek(label);
        return new Fields(node, place.row(name), "", problems);
    }

    private List<Fields> elements(JsonNode list, String name) {
        if (!list.isArray()) {
            error("register-list", name, name + " is " + shown(list), "a list in square brackets", "write a list");
            return List.of();
        }
        List<Fields> all = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            all.add(new Fields(list.path(i), place, inside(name) + "[" + (i + 1) + "]", problems));
        }
        return all;
    }

    private String inside(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static String shown(JsonNode found) {
        return found.isMissingNode() ? "missing" : found.toString();
    }
}
