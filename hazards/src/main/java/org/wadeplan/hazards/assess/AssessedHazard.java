package org.wadeplan.hazards.assess;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.register.Control;
import org.wadeplan.hazards.register.Sign;

/**
 * A hazard that applies to this visit.
 *
 * @param id row of the register, or {@code N01}, {@code N02} for one that has none
 * @param title what it is
 * @param inherent before any control
 * @param residual with the controls that someone has said are in place today
 * @param ifControlsDone with every engineering, administrative and personal control of the list done
 * @param controls best level first
 * @param why what made it apply, with the numbers found
 * @param seen what people saw at this site
 * @param askOnSite question before going in
 * @param sign warning sign
 * @param leansOnPeople true where no control better than rules and equipment worn is in place
 * @param unrated true where nobody has rated it and the worst plausible counts
 * @param source where the row comes from
 */
public record AssessedHazard(
        String id,
        String title,
        RiskScore inherent,
        RiskScore residual,
        RiskScore ifControlsDone,
        List<Control> controls,
        List<String> why,
        List<SiteHazard> seen,
        Optional<String> askOnSite,
        Sign sign,
        boolean leansOnPeople,
        boolean unrated,
        String source) {

    /**
     * What is new at the site, then by residual score, then the worse consequence, then the id. Total, and the same on every
     * machine.
     */
    public static final Comparator<AssessedHazard> FIRST_TO_SAY = Comparator.comparing(AssessedHazard::newSinceLast)
            .reversed()
            .thenComparing(hazard -> -hazard.residual().log10())
            .thenComparing(hazard -> -hazard.residual().consequence())
            .thenComparing(AssessedHazard::id);

    public AssessedHazard {
        controls =
                controls.stream().sorted(Comparator.comparing(Control::level)).toList();
        why = List.copyOf(why);
        seen = List.copyOf(seen);
    }

    /** True where death is a credible outcome, whatever the band. */
    public boolean canKill() {
        return inherent.canKill();
    }

    public boolean newSinceLast() {
        return seen.stream().anyMatch(SiteHazard::newSinceLast);
    }
}
