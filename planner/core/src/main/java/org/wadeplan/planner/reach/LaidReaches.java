package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.reach.LengthBand;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.StretchShape;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/**
 * The reaches of a round with how sure their lengths and places are.
 *
 * @param reaches in the order of the site list
 * @param lengths by reach, in the same order
 * @param stakeUncertaintyM of a stake's place on the ground by handheld, metres
 * @param pastStarts every past visit with coordinates, by reach, oldest first
 * @param grounds slope and walk-in, by reach, in the same order
 */
public record LaidReaches(
        List<Reach> reaches,
        List<GroundBand> lengths,
        double stakeUncertaintyM,
        List<SitePastStart> pastStarts,
        List<SiteGround> grounds) {

    public LaidReaches {
        reaches = List.copyOf(reaches);
        lengths = List.copyOf(lengths);
        pastStarts = List.copyOf(pastStarts);
        grounds = List.copyOf(grounds);
    }

    /**
     * How long one reach probably is on the ground.
     *
     * @param site site code
     * @param width the mean width that the band rests on; empty where nobody knows
     * @param sizeWords how its length came about
     * @param band with what was measured and what was assumed
     */
    public record GroundBand(String site, Optional<MeanWidth> width, String sizeWords, LengthBand band) {}

    /** For reaches that were laid for this round. */
    public static LaidReaches of(Round round, List<Reach> reaches) {
        SiteReaches sites = new SiteReaches(round);
        List<GroundBand> bands = new ArrayList<>();
        for (Reach reach : reaches) {
            Optional<Site> site = round.site(reach.site());
            Optional<MeanWidth> width = site.flatMap(sites::width);
            bands.add(new GroundBand(
                    reach.site(),
                    width,
                    site.map(sites::sizeWords).orElse(""),
                    LengthBand.of(StretchShape.of(reach.line()), width)));
        }
        return new LaidReaches(
                reaches,
                bands,
                round.header().stakeUncertaintyM(),
                SitePastStart.of(round, reaches),
                GroundLayout.of(round, reaches));
    }
}
