package org.wadeplan.planner.effort;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Site;

/**
 * Button seconds of a visit, from the site's own visits and, where there are few, from what the whole round tells: seconds
 * for each metre of width, the median over all its electrofishing visits. The model is ours.
 */
final class ShockTimeModel {

    private static final double PLANNED_SHARE = 0.8;

    private final History history;

    /** What the round's visits make of a width. */
    private record Modelled(double p50S, double spread, String words) {}

    ShockTimeModel(History history) {
        this.history = history;
    }

    /** A problem where there is neither a visit here nor a width to model from. */
    Checked<ShockTime> of(Site site) {
        List<Double> own = history.shockS(site.id());
        if (OwnHistory.speaksForItself(own)) {
            return Checked.of(new ShockTime(
                    Plain.ceil(Quantile.median(own)),
                    Plain.ceil(Quantile.of(own, PLANNED_SHARE)),
                    own.size(),
                    "median of " + OwnHistory.words(own.size())));
        }
        return modelled(site)
                .map(model -> Checked.of(mixed(own, model)))
                .orElseGet(() -> own.isEmpty() ? Checked.failed(unknown(site)) : Checked.of(alone(own)));
    }

    private static ShockTime mixed(List<Double> own, Modelled model) {
        double p50S = OwnHistory.median(own, model.p50S());
        String basis = own.isEmpty()
                ? "modelled, no history here: " + model.words()
                : OwnHistory.words(own.size()) + " here (median " + Plain.number(Quantile.median(own), 0)
                        + " s), and for the rest of three the model: " + model.words();
        return new ShockTime(Plain.ceil(p50S), Plain.ceil(p50S * model.spread()), own.size(), basis);
    }

    /** Without a width nothing says how much more it may be than what was seen. */
    private static ShockTime alone(List<Double> own) {
        return new ShockTime(
                Plain.ceil(Quantile.median(own)),
                Plain.ceil(Quantile.of(own, 1)),
                own.size(),
                OwnHistory.words(own.size()) + " here, and no width to model the rest from; the longest stands for the"
                        + " 80th percentile");
    }

    private Optional<Modelled> modelled(Site site) {
        List<Double> perWidthM = history.shockSPerWidthM();
        OptionalDouble today = site.conditions().widthM();
        OptionalDouble widthM = today.isPresent() ? today : history.medianWidthM(site.id());
        if (perWidthM.isEmpty() || widthM.isEmpty()) {
            return Optional.empty();
        }
        double medianSPerM = Quantile.median(perWidthM);
        double p50S = medianSPerM * widthM.getAsDouble();
        double spread = medianSPerM > 0 ? Quantile.of(perWidthM, PLANNED_SHARE) / medianSPerM : 1;
        return Optional.of(new Modelled(
                p50S,
                spread,
                Plain.number(medianSPerM, 0) + " s for each metre of width (median of " + perWidthM.size()
                        + " visits of the round) times " + Plain.number(widthM.getAsDouble(), 1) + " m"));
    }

    private static Problem unknown(Site site) {
        return Problem.error(
                "shock-time-unknown",
                SourcePlace.part("sites.csv", site.id()).column("width_m"),
                "no earlier electrofishing here, and no width or no visit elsewhere to model the button time from,"
                        + " so the number of packs cannot be worked out",
                "what the number of packs rests on",
                "measure the width, or carry as many packs as the operator asks for");
    }
}
