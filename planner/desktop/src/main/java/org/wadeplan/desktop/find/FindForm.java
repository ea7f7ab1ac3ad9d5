package org.wadeplan.desktop.find;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/**
 * What can be said of a pest that was seen.
 *
 * @param waters of the round
 * @param pests of the round
 * @param when the time to begin with, as it is typed
 */
public record FindForm(List<Choice> waters, List<Choice> pests, String when, ZoneId zone) {

    private static final DateTimeFormatter TYPED =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    /** Something to choose, by its id and its name. */
    public record Choice(String id, String name) {

        @Override
        public String toString() {
            return id + ", " + name;
        }
    }

    /** The form for a round, with the time of a moment to begin with. */
    public static FindForm of(Round round, Instant moment) {
        ZoneId zone = round.header().zone();
        return new FindForm(
                round.waters().stream().map(FindForm::choice).toList(),
                round.biosecurity().pests().stream().map(FindForm::choice).toList(),
                TYPED.format(moment.atZone(zone)),
                zone);
    }

    private static Choice choice(Water water) {
        return new Choice(water.id(), water.name());
    }

    private static Choice choice(Pest pest) {
        return new Choice(pest.id(), pest.name());
    }

    /** The time as typed, in the round's zone; empty where it is no such time. */
    public Optional<Instant> instant(String typed) {
        try {
            String plain = typed.strip().replace('T', ' ');
            return Optional.of(LocalDateTime.parse(plain, TYPED).atZone(zone).toInstant());
        } catch (DateTimeParseException odd) {
            return Optional.empty();
        }
    }

    /** What is still missing or wrong, in a sentence; empty where the find is whole. */
    public Optional<String> missing(Optional<Choice> water, Optional<Choice> pest, String typed) {
        if (water.isEmpty()) {
            return Optional.of(Words.of("find.noWater"));
        }
        if (pest.isEmpty()) {
            return Optional.of(Words.of("find.noPest"));
        }
        return instant(typed).isEmpty() ? Optional.of(Words.of("find.noTime")) : Optional.empty();
    }

    /** The find; empty where something is missing. */
    public Optional<SeenPest> seen(Optional<Choice> water, Optional<Choice> pest, String typed) {
        return water.flatMap(
                at -> pest.flatMap(what -> instant(typed).map(when -> new SeenPest(at.id(), what.id(), when))));
    }
}
