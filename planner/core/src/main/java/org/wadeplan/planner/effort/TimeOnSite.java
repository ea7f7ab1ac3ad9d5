package org.wadeplan.planner.effort;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Site;

/**
 * How long a part of a visit takes on site: from the site's own visits, and where there are fewer than three, mixed with
 * the method's own model on width and fish; see {@link OwnHistory}.
 */
final class TimeOnSite {

    private static final double PLANNED_SHARE = 0.8;

    private final History history;

    /** Minutes that the method's own figures give. */
    private record Modelled(double p50Min, String words) {}

    TimeOnSite(History history) {
        this.history = history;
    }

    /** Minutes on site, rounded up; a problem where only the width could tell and nobody measured it. */
    Checked<PartEffort> of(Site site, Method method, MethodPart part) {
        List<Double> past = history.onSiteMin(site.id(), method.kind(), part.part());
        if (!OwnHistory.speaksForItself(past)) {
            return withModel(site, method, part, past);
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

    private Checked<PartEffort> withModel(Site site, Method method, MethodPart part, List<Double> past) {
        Optional<Modelled> model = modelled(site, method, part);
        if (model.isEmpty()) {
            return past.isEmpty()
                    ? Checked.failed(noWidth(site, method))
                    : Checked.of(effort(part, Quantile.median(past), past.size(), alone(past, method)));
        }
        String few = past.isEmpty()
                ? "no earlier visit; "
                : OwnHistory.words(past.size()) + " (median " + Plain.number(Quantile.median(past), 0)
                        + " min), and for the rest of three ";
        return Checked.of(effort(
                part,
                OwnHistory.median(past, model.get().p50Min()),
                past.size(),
                few + model.get().words()));
    }

    private static String alone(List<Double> past, Method method) {
        return OwnHistory.words(past.size()) + ", and no width to ask the figure of " + method.id() + " with";
    }

    /** Minutes of the method's own model: fixed, by width and by fish; empty where it asks for a width nobody measured. */
    private Optional<Modelled> modelled(Site site, Method method, MethodPart part) {
        boolean today = site.conditions().widthM().isPresent();
        OptionalDouble widthM = today ? site.conditions().widthM() : history.medianWidthM(site.id());
        if (part.p50PerWidthMMin() > 0 && widthM.isEmpty()) {
            return Optional.empty();
        }
        double byWidthMin = part.p50PerWidthMMin() * widthM.orElse(0);
        OptionalDouble fish =
                part.p50PerFishMin() > 0 ? history.medianFishCount(site.id(), method.kind()) : OptionalDouble.empty();
        String words = "the figure of " + method.id() + " (" + part.source() + "): "
                + Plain.number(part.p50FixedMin(), 1) + " min"
                + (part.p50PerWidthMMin() > 0
                        ? " and " + Plain.number(part.p50PerWidthMMin(), 1) + " min for each of "
                                + Plain.number(widthM.orElse(0), 1) + " m of width"
                                + (today ? "" : " (the median of earlier visits)")
                        : "")
                + fishWords(part, fish);
        return Optional.of(
                new Modelled(part.p50FixedMin() + byWidthMin + part.p50PerFishMin() * fish.orElse(0), words));
    }

    private static String fishWords(MethodPart part, OptionalDouble fish) {
        if (part.p50PerFishMin() == 0) {
            return "";
        }
        return fish.isPresent()
                ? " and " + Plain.number(part.p50PerFishMin(), 2) + " min for each of "
                        + Plain.number(fish.getAsDouble(), 0) + " fish (median of earlier visits)"
                : ", and nothing for fish, for no earlier visit counted them: it takes longer where there are many";
    }

    private static PartEffort effort(MethodPart part, double p50Min, int visits, String basis) {
        return new PartEffort(
                part.part(),
                Plain.ceil(p50Min),
                Plain.ceil(p50Min * part.p80Factor()),
                visits,
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
