package org.wadeplan.planner.draw;

import java.util.List;
import org.wadeplan.geo.draw.BalanceRecord;
import org.wadeplan.geo.draw.FrameLengths;
import org.wadeplan.geo.draw.StratumRecord;
import org.wadeplan.geo.draw.StratumVisits;

/**
 * A draw for a round, with all that it takes to repeat and to weigh it.
 *
 * @param formatVersion raised when the form changes
 * @param program version of the program that drew
 * @param round id of the round
 * @param inputHash SHA-256 over the round folder's files
 * @param framePrint SHA-256 of the frame: the same print and the same request give the same draw
 * @param crs the system that coordinates are in
 * @param request what was asked for
 * @param reachRule how long reaches are and how they are parted, in words
 * @param design how the draw was made and what its figures mean, in sentences
 * @param frame what became of the mapped length
 * @param strata what was drawn from each stratum
 * @param visits how each stratum stands after the losses known so far
 * @param places every drawn place, in the order in which to use them within each stratum
 * @param balance of the base over the whole frame
 * @param balanceMeaning what the figure means, in a sentence
 */
public record RoundDraw(
        int formatVersion,
        String program,
        String round,
        String inputHash,
        String framePrint,
        String crs,
        DrawRequest request,
        String reachRule,
        List<String> design,
        FrameLengths frame,
        List<StratumRecord> strata,
        List<StratumVisits> visits,
        List<DrawnPlace> places,
        BalanceRecord balance,
        String balanceMeaning) {

    static final int FORMAT_VERSION = 1;

    public RoundDraw {
        design = List.copyOf(design);
        strata = List.copyOf(strata);
        visits = List.copyOf(visits);
        places = List.copyOf(places);
    }
}
