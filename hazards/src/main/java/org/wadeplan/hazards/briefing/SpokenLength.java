package org.wadeplan.hazards.briefing;

import java.util.List;
import org.wadeplan.hazards.limits.ReadingEase;

/** How long a briefing may be. */
final class SpokenLength {

    /** Five minutes at most, with room to talk; a local setting. */
    static final int MOST_WORDS = 450;

    private SpokenLength() {}

    static int words(List<String> lines) {
        return lines.stream().mapToInt(ReadingEase::words).sum();
    }

    static int aloudMin(int words) {
        return ReadingEase.aloudMin(words);
    }
}
