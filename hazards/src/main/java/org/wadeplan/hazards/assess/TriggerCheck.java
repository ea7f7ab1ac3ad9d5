package org.wadeplan.hazards.assess;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.Condition;
import org.wadeplan.hazards.register.Trigger;
import org.wadeplan.hazards.register.WhenUnknown;

/** Holds the conditions of a trigger against an exposure. */
final class TriggerCheck {

    private final Exposure exposure;

    TriggerCheck(Exposure exposure) {
        this.exposure = exposure;
    }

    /** All lines that hold give reasons; where none holds, all that could hold give what is open. */
    Finding check(Trigger trigger) {
        List<String> why = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (List<Condition> line : trigger.anyOf()) {
            Finding finding = all(line);
            if (finding instanceof Finding.Applies applies) {
                applies.why().stream().filter(reason -> !why.contains(reason)).forEach(why::add);
            } else if (finding instanceof Finding.Open asks) {
                open.addAll(asks.open());
            }
        }
        if (!why.isEmpty()) {
            return new Finding.Applies(why);
        }
        return open.isEmpty() ? new Finding.Absent() : new Finding.Open(open);
    }

    /** True where no line of the trigger fits what people do, whatever the site is like. */
    boolean activitiesMissing(Trigger trigger) {
        return trigger.anyOf().stream().allMatch(line -> line.stream()
                .anyMatch(condition -> condition instanceof Condition.Doing doing
                        && !exposure.activities().contains(doing.activity())));
    }

    Finding check(Condition condition) {
        if (condition instanceof Condition.Doing doing) {
            return exposure.activities().contains(doing.activity())
                    ? applies(doing.activity().words())
                    : new Finding.Absent();
        }
        return condition instanceof Condition.Feature feature
                ? feature(feature)
                : measured((Condition.Measured) condition);
    }

    private Finding all(List<Condition> line) {
        List<String> why = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (Condition condition : line) {
            Finding finding = check(condition);
            if (finding instanceof Finding.Absent) {
                return finding;
            }
            if (finding instanceof Finding.Applies applies) {
                why.addAll(applies.why());
            } else if (finding instanceof Finding.Open asks) {
                open.addAll(asks.open());
            }
        }
        return open.isEmpty() ? new Finding.Applies(why) : new Finding.Open(open);
    }

    private Finding feature(Condition.Feature condition) {
        String words = condition.feature().replace('-', ' ');
        return exposure.conditions()
                .feature(condition.feature())
                .map(present -> present ? applies(words) : new Finding.Absent())
                .orElseGet(() -> unknown(condition.whenUnknown(), words));
    }

    private Finding measured(Condition.Measured condition) {
        Attribute attribute = condition.attribute();
        Reading reading = exposure.conditions().reading(attribute);
        if (reading instanceof Reading.Known known) {
            if (!condition.comparison().holds(known.number(), condition.limit())) {
                return new Finding.Absent();
            }
            String note = known.note().isBlank() ? "" : " (" + known.note() + ")";
            return applies(attribute.words() + " " + attribute.shown(known.number()) + note + ", "
                    + condition.comparison().words() + " " + attribute.shown(condition.limit()));
        }
        if (reading instanceof Reading.Unknown missing) {
            return unknown(condition.whenUnknown(), missing.reason());
        }
        return new Finding.Absent();
    }

    private static Finding unknown(WhenUnknown whenUnknown, String words) {
        return whenUnknown == WhenUnknown.COUNTS ? applies("not known: " + words) : new Finding.Open(List.of(words));
    }

    private static Finding applies(String reason) {
        return new Finding.Applies(List.of(reason));
    }
}
