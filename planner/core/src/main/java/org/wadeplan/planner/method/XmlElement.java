package org.wadeplan.planner.method;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One element of an XML file.
 *
 * @param name without its prefix
 * @param namespace blank where it has none
 * @param attributes by name without prefix; those of a foreign namespace are left out
 * @param text the characters directly inside it
 * @param line where it starts
 */
record XmlElement(
        String name,
        String namespace,
        Map<String, String> attributes,
        String text,
        List<XmlElement> children,
        int line) {

    Optional<String> attribute(String attributeName) {
        return Optional.ofNullable(attributes.get(attributeName)).filter(value -> !value.isBlank());
    }

    Stream<XmlElement> children(String childName) {
        return children.stream().filter(child -> child.name.equals(childName) && child.namespace.equals(namespace));
    }

    Optional<XmlElement> child(String childName) {
        return children(childName).findFirst();
    }

    /** The text of a {@code text} element inside this one, stripped. */
    Optional<String> innerText() {
        return child("text").map(inner -> inner.text.strip());
    }

    /** This element and all below it, in the order of the file. */
    Stream<XmlElement> everything() {
        return Stream.concat(Stream.of(this), children.stream().flatMap(XmlElement::everything));
    }
}
