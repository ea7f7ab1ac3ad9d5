package org.wadeplan.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.decon.record.ReleaseAnswer;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/** The answer whether a set may leave, as lines of text. */
final class ReleaseText {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final Round round;
    private final ReleaseAnswer answer;
    private final ZoneId zone;

    ReleaseText(Round round, ReleaseAnswer answer) {
        this.round = round;
        this.answer = answer;
        this.zone = round.header().zone();
    }

    List<String> lines() {
        List<String> text = new ArrayList<>();
        text.add("Kit set " + answer.kitSet() + " to " + name(answer.toWater()) + " at " + at(answer.at())
                + " · times in " + zone);
        text.addAll(TextTable.hanging("", verdict()));
        text.add("");
        text.add(answer.held().isEmpty() ? "It was in no water on file." : "It was in:");
        for (ReleaseAnswer.Held held : answer.held()) {
            text.addAll(TextTable.hanging("  ", held(held)));
        }
        if (!answer.cleared().isEmpty()) {
            text.add("What clears it:");
            answer.cleared().forEach(one -> text.addAll(TextTable.hanging("  ", cleared(one))));
        }
        section(text, "What stands against it:", answer.missing());
        section(text, "Refused records:", answer.refused());
        section(text, "Overrides:", answer.letGo());
        section(text, "Ways out:", answer.waysOut());
        if (!answer.mayLeave()) {
            text.add(answer.earliest()
                    .map(moment -> "Earliest: " + at(moment))
                    .orElse("Earliest: nothing in the tables releases this set to that water."));
        }
        return text;
    }

    private String verdict() {
        return switch (answer.verdict()) {
            case CLEARED ->
                "May leave by the records: nothing was found against it. That is what was written down, not what is on"
                        + " the kit: look it over before it goes.";
            case LET_GO -> "Not cleared by the records. A person let it go all the same; it does not count as clean.";
            case HELD -> "May not leave by the records.";
        };
    }

    private String held(ReleaseAnswer.Held held) {
        String until = held.until().equals(Instant.MIN) ? "" : " until " + at(held.until());
        String pests = held.pests().isEmpty() ? "no pest counts there" : String.join(", ", held.pests());
        String open = held.open().isEmpty() ? "" : " · open: " + String.join(", ", held.open());
        return held.water() + " (" + held.where() + ")" + until + ": " + pests + open;
    }

    private String cleared(ReleaseAnswer.Cleared one) {
        return one.cover().pest() + " on " + one.cover().material().name().toLowerCase(Locale.ROOT) + " items from "
                + one.water() + ": cleaning " + one.cleaning() + ", "
                + one.cover().treatment() + ", grade "
                + one.cover().grade() + " (" + one.cover().source() + "), from " + at(one.from());
    }

    private static void section(List<String> text, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            text.add(heading);
            lines.forEach(line -> text.addAll(TextTable.hanging("  - ", line)));
        }
    }

    private String name(String water) {
        return round.water(water).map(Water::name).orElse(water);
    }

    private String at(Instant moment) {
        return MOMENT.format(moment.atZone(zone));
    }
}
