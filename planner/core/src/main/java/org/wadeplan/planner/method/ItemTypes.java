package org.wadeplan.planner.method;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** The types that a DMN file defines itself, and the types of its input data. */
final class ItemTypes {

    private final XmlElement root;

    ItemTypes(XmlElement root) {
        this.root = root;
    }

    /** A defined type. {@code allowed} is the text of its allowed values. */
    record Item(ValueType type, Optional<String> allowed) {}

    /** The type of that name, followed through definitions by definitions; empty where it ends in none that is known. */
    Optional<Item> named(String name) {
        Set<String> seen = new HashSet<>();
        Optional<String> allowed = Optional.empty();
        String at = name;
        while (seen.add(at)) {
            Optional<ValueType> plain = ValueType.named(at);
            if (plain.isPresent()) {
                return Optional.of(new Item(plain.get(), allowed));
            }
            Optional<XmlElement> definition = definition(at);
            allowed = allowed.or(() ->
                    definition.flatMap(item -> item.child("allowedValues")).flatMap(XmlElement::innerText));
            Optional<String> base = definition
                    .flatMap(item -> item.child("typeRef"))
                    .map(ref -> ref.text().strip());
            if (base.isEmpty()) {
                return Optional.empty();
            }
            at = base.get();
        }
        return Optional.empty();
    }

    /** What the file says of the input data of that name. */
    Optional<String> ofInputData(String name) {
        return root.children("inputData")
                .flatMap(data -> data.child("variable").stream())
                .filter(variable -> variable.attribute("name").equals(Optional.of(name)))
                .flatMap(variable -> variable.attribute("typeRef").stream())
                .findFirst();
    }

    private Optional<XmlElement> definition(String name) {
        String bare = name.substring(name.indexOf(':') + 1);
        return root.children("itemDefinition")
                .filter(item -> item.attribute("name").equals(Optional.of(bare)))
                .findFirst();
    }
}
