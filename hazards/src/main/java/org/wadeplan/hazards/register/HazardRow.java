package org.wadeplan.hazards.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.wadeplan.hazards.limits.ReadingEase;

/** Reads one row of a register. */
final class HazardRow {

    /** Longer lines are lost on a tired crew; a local setting. */
    static final int MOST_WORDS_A_LINE = 25;

    private static final Set<String> MEMBERS = Set.of(
            "id",
            "version",
            "title",
            "consequence",
            "likelihood",
            "when",
            "raisedBy",
            "controls",
            "stops",
            "ask",
            "sign",
            "source");

    private HazardRow() {}

    /** The row, or empty where a part without which it means nothing is wrong; each fault is noted in the fields. */
    static Optional<Hazard> read(Fields row) {
        row.only(MEMBERS);
        String id = row.text("id");
        String version = row.text("version");
        String title = spoken(row, "title");
        OptionalInt consequence = row.wholeNumber("consequence", 1, 5);
        OptionalInt likelihood = row.wholeNumber("likelihood", 1, 5);
        Trigger trigger = trigger(row);
        List<Condition> raisedBy = row.has("raisedBy") ? conditions(row.children("raisedBy")) : List.of();
        List<Control> controls = controls(row);
        List<StopRule> stops = row.has("stops") ? stops(row) : List.of();
        Optional<String> ask = row.has("ask") ? Optional.of(spoken(row, "ask")) : Optional.empty();
        Optional<Sign> sign = sign(row);
        String source = row.text("source");
        if (id.isEmpty() || consequence.isEmpty() || likelihood.isEmpty() || sign.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Hazard(
                id,
                version,
                title,
                trigger,
                raisedBy,
                consequence.getAsInt(),
                likelihood.getAsInt(),
                controls,
                stops,
                ask,
                sign.get(),
                source));
    }

    private static Trigger trigger(Fields row) {
        List<List<Condition>> lines = new ArrayList<>();
        for (List<Fields> line : row.lines("when")) {
            List<Condition> conditions = conditions(line);
            if (!conditions.isEmpty()) {
                lines.add(conditions);
            }
        }
        if (lines.isEmpty()) {
            row.error(
                    "register-no-trigger",
                    "when",
                    "no condition says when the hazard applies",
                    "[[condition, ...], ...]",
                    "write at least one condition");
        }
        return new Trigger(lines);
    }

    private static List<Condition> conditions(List<Fields> all) {
        return all.stream().flatMap(one -> condition(one).stream()).toList();
    }

    private static Optional<Condition> condition(Fields fields) {
        if (fields.has("activity")) {
            fields.only(Set.of("activity"));
            return fields.word("activity", Activity.values()).map(Condition.Doing::new);
        }
        Optional<WhenUnknown> unknown = fields.word("whenUnknown", WhenUnknown.values());
        if (fields.has("feature")) {
            fields.only(Set.of("feature", "whenUnknown"));
            String feature = fields.text("feature");
            return unknown.filter(known -> !feature.isEmpty()).map(known -> new Condition.Feature(feature, known));
        }
        fields.only(Set.of("attribute", "comparison", "value", "whenUnknown"));
        return limit(fields)
                .flatMap(limit -> unknown.map(known ->
                        new Condition.Measured(limit.attribute(), limit.breachedWhen(), limit.value(), known)));
    }

    private static Optional<StopRule.Limit> limit(Fields fields) {
        Optional<Attribute> attribute = fields.word("attribute", Attribute.values());
        Optional<Comparison> comparison = fields.word("comparison", Comparison.values());
        OptionalDouble value = fields.number("value");
        if (attribute.isEmpty() || comparison.isEmpty() || value.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new StopRule.Limit(attribute.get(), comparison.get(), value.getAsDouble()));
    }

    private static List<Control> controls(Fields row) {
        List<Control> controls = new ArrayList<>();
        for (Fields fields : row.children("controls")) {
            fields.only(Set.of("level", "owner", "text"));
            String owner = fields.text("owner");
            String text = spoken(fields, "text");
            fields.word("level", ControlLevel.values())
                    .ifPresent(level -> controls.add(new Control(level, owner, text)));
        }
        if (controls.isEmpty()) {
            row.error("register-no-control", "controls", "no control", "at least one", "write what people do");
        }
        return controls;
    }

    private static List<StopRule> stops(Fields row) {
        List<StopRule> stops = new ArrayList<>();
        for (Fields fields : row.children("stops")) {
            fields.only(Set.of("say", "limit", "source"));
            String say = spoken(fields, "say");
            String source = fields.text("source");
            stops.add(new StopRule(say, fields.child("limit").flatMap(HazardRow::limit), source));
        }
        return stops;
    }

    private static Optional<Sign> sign(Fields row) {
        Optional<Fields> sign = row.child("sign");
        if (sign.isEmpty()) {
            row.error("register-missing", "sign", "sign is missing", "{\"words\": ...}", "write the words of the sign");
            return Optional.empty();
        }
        Fields fields = sign.get();
        fields.only(Set.of("code", "words"));
        Optional<String> code = fields.optionalText("code");
        if (code.isPresent() && !Sign.CONFIRMED.contains(code.get())) {
            fields.error(
                    "register-sign",
                    "code",
                    "sign number " + code.get() + " is not confirmed",
                    String.join(", ", Sign.CONFIRMED),
                    "leave the number out and keep the words");
        }
        return Optional.of(new Sign(code, fields.text("words")));
    }

    private static String spoken(Fields fields, String name) {
        String line = fields.text(name);
        int words = ReadingEase.words(line);
        if (words >= MOST_WORDS_A_LINE) {
            fields.warning(
                    "register-long-line",
                    name,
                    words + " words in one line",
                    "fewer than " + MOST_WORDS_A_LINE,
                    "say it shorter; people hear this read aloud");
        }
        return line;
    }
}
