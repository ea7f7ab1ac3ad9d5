package org.wadeplan.hazards.register;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A word of the register file's fixed vocabulary. */
interface Keyed {

    /** As written in the file. */
    String key();

    static <T extends Keyed> Optional<T> find(T[] all, String key) {
        return Stream.of(all).filter(one -> one.key().equals(key)).findFirst();
    }

    static <T extends Keyed> List<String> keys(T[] all) {
        return Stream.of(all).map(Keyed::key).toList();
    }
}
