package org.wadeplan.desktop.map;

import java.util.Locale;
import org.wadeplan.geo.search.Score;
import org.wadeplan.planner.reach.ProposedReach;

/**
 * A line of the table of candidates; everything in words.
 *
 * @param fromMouth metres from the mouth of its line to its start
 * @param score of 100, with the range that unknown parts leave
 */
record CandidateRow(String name, String rank, String stream, String water, String fromMouth, String score) {

    static CandidateRow of(ProposedReach candidate) {
        return new CandidateRow(
                candidate.name(),
                Integer.toString(candidate.rank()),
                candidate.reach().stream(),
                candidate.water(),
                whole(candidate.fromMouthM()),
                score(candidate.score()));
    }

    static String score(Score score) {
        return score.highest() > score.lowest()
                ? whole(score.points()) + " (" + whole(score.lowest()) + "–" + whole(score.highest()) + ")"
                : whole(score.points());
    }

    static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
