package org.wadeplan.planner.decon;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import org.wadeplan.planner.round.Round;

/** A round with one of its parts replaced, whatever other parts a round has. */
public final class RoundCopies {

    private RoundCopies() {}

    /** The round with the part of that name replaced. */
    public static Round with(Round round, String part, Object value) {
        RecordComponent[] parts = Round.class.getRecordComponents();
        if (Arrays.stream(parts).noneMatch(one -> one.getName().equals(part))) {
            throw new IllegalArgumentException("a round has no " + part);
        }
        try {
            Object[] values = new Object[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = parts[i].getName().equals(part)
                        ? value
                        : parts[i].getAccessor().invoke(round);
            }
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return Round.class.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException fault) {
            throw new LinkageError("a round cannot be copied", fault);
        }
    }
}
