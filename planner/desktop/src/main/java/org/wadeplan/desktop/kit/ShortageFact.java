package org.wadeplan.desktop.kit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.kit.Shortage;

/** A shortage as it is read aloud: what, how much, why, and the way out. */
final class ShortageFact {

    private ShortageFact() {}

    static Fact of(Shortage shortage) {
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
