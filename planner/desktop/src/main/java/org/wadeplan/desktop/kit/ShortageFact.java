package org.wadeplan.desktop.kit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.kit.Shortage;

/** A shortage as it is read aloud: what, how much, why, and the way out. */
final class ShortageFact {

    private ShortageFact() {}

    /** What is short for a crew on a day, then where only the spare is missing. */
    static List<Fact> of(WeekInForce week, LocalDate date, String crew) {
        Stream<Fact> shortages = week.shortages(date, crew).stream().map(ShortageFact::of);
        Stream<Fact> spares = week.kit().spares().stream()
                .filter(note -> note.days().contains(date))
                .map(note -> new Fact(Words.of("kit.noSpare", note.kind().replace('-', ' ')), note.found()));
        return Stream.concat(shortages, spares).toList();
    }

    private static Fact of(Shortage shortage) {
        String head = Words.of(
                "kit.short",
                shortage.kind().replace('-', ' '),
                number(shortage.needed()),
                number(shortage.available()),
                String.join(" and ", shortage.crews()));
        return new Fact(head, shortage.reason() + "\n" + Words.of("kit.wayOut", shortage.remedy()));
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
