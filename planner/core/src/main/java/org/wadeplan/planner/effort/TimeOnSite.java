package org.wadeplan.planner.effort;

import java.util.List;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Site;

/** How long a part of a visit takes on site: from the site's own history where there is enough of it. */
final class TimeOnSite {

    /** Fewer visits than this say too little about the spread (a convention of this program). */
    private static final int ENOUGH_VISITS = 3;

    private static final double PLANNED_SHARE = 0.8;

    private final History history;

    TimeOnSite(History history) {
        this.history = history;
    }

    /** Minutes on site, rounded up; a problem where only the width could tell and nobody measured it. */
    Checked<PartEffort> of(Site site, Method method, MethodPart part) {
        List<Double> past = history.onSiteMin(site.id(), method.kind(), part.part());
        if (past.size() < ENOUGH_VISITS) {
            return fromMethod(site, method, part, past.size());
        }
        String basis = past.size() + " earlier visits took " + Plain.number(Quantile.of(past, 0), 0) + " to "
                + Plain.number(Quantile.of(past, 1), 0) + " min; median, and 80th percentile (type 7)";
        return Checked.of(new PartEffort(
                part.part(),
                Plain.ceil(Quantile.median(past)),
                Plain.ceil(Quantile.of(past, PLANNED_SHARE)),
                past.size(),
                basis));
    }

    private Checked<PartEffort> fromMethod(Site site, Method method, MethodPart part, int past) {
        String few = past == 0 ? "no earlier visit" : past + " earlier visit" + (past == 1 ? "" : "s") + ", too few";
        String figure = few + "; the figure of " + method.id() + " (" + part.source() + "): "
                + Plain.number(part.p50FixedMin(), 1) + " min";
        if (part.p50PerWidthMMin() == 0) {
            return Checked.of(effort(part, part.p50FixedMin(), figure));
        }
        boolean today = site.conditions().widthM().isPresent();
        OptionalDouble widthM = today ? site.conditions().widthM() : history.medianWidthM(site.id());
        if (widthM.isEmpty()) {
            return Checked.failed(noWidth(site, method));
        }
        double p50Min = part.p50FixedMin() + part.p50PerWidthMMin() * widthM.getAsDouble();
        return Checked.of(effort(
                part,
                p50Min,
                figure + " and " + Plain.number(part.p50PerWidthMMin(), 1) + " min for each of "
                        + Plain.number(widthM.getAsDouble(), 1) + " m of width"
                        + (today ? "" : " (the median of earlier visits)")));
    }

    private static PartEffort effort(MethodPart part, double p50Min, String basis) {
        double p80Min = p50Min * part.p80Factor();
        return new PartEffort(
                part.part(),
                Plain.ceil(p50Min),
                Plain.ceil(p80Min),
                0,
                basis + "; 80th percentile " + Plain.number(part.p80Factor(), 3) + " times that");
    }

    private static Problem noWidth(Site site, Method method) {
        return Problem.error(
                "width-unknown",
                SourcePlace.part("sites.csv", site.id()).column("width_m"),
                "no width here and none from earlier visits, so the time on site for " + method.id()
                        + " cannot be worked out",
                "a width in metres",
                "measure it or take it from a map, and write it into sites.csv");
    }
}
