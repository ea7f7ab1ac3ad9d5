package org.wadeplan.planner.effort;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.Site;

/** How many packs to carry: button seconds expected, with a reserve, by what one pack gives in this water. */
final class BatteryPlan {

    private final History history;
    private final List<PackSeconds> packSeconds;
    private final double reserveFactor;

    /** Button seconds expected, and where the figure comes from. */
    private record Expected(int shockS, String from) {}

    /** What one pack gives, and where the figure comes from. */
    private record Usable(int usableS, String from) {}

    BatteryPlan(History history, List<PackSeconds> packSeconds, double reserveFactor) {
        this.history = history;
        this.packSeconds = packSeconds.stream()
                .sorted(Comparator.comparing(PackSeconds::conductivityMaxUsCm))
                .toList();
        this.reserveFactor = reserveFactor;
    }

    /** Whole packs, the reserve included; a problem where history, width or the table of packs leave it open. */
    Checked<BatteryNeed> of(Site site) {
        return expected(site).then(expected -> usable(site).map(usable -> need(expected, usable)));
    }

    private BatteryNeed need(Expected expected, Usable usable) {
        double exact = reserveFactor * expected.shockS() / usable.usableS();
        int packs = Math.max(1, Plain.ceil(exact));
        String explanation = expected.from() + ": " + expected.shockS() + " s of button time; with a reserve of "
                + Plain.number(reserveFactor, 2) + " times, by " + usable.usableS() + " s from a pack (" + usable.from()
                + "), that is " + Plain.number(exact, 2) + ", so " + packs + (packs == 1 ? " pack" : " packs");
        return new BatteryNeed(expected.shockS(), usable.usableS(), reserveFactor, packs, explanation);
    }

    private Checked<Expected> expected(Site site) {
        List<Double> past = history.shockS(site.id());
        if (!past.isEmpty()) {
            String from = past.size() == 1 ? "one earlier visit" : "median of " + past.size() + " earlier visits";
            return Checked.of(new Expected(Plain.ceil(Quantile.median(past)), from));
        }
        List<Double> perWidthM = history.shockSPerWidthM();
        OptionalDouble widthM = site.conditions().widthM();
        if (perWidthM.isEmpty() || widthM.isEmpty()) {
            return Checked.failed(problem(
                    "shock-time-unknown",
                    site,
                    "width_m",
                    "no earlier electrofishing here, and no width or no visit elsewhere to model the button time from",
                    "measure the width, or carry as many packs as the operator asks for"));
        }
        double medianSPerM = Quantile.median(perWidthM);
        String from = "modelled, no history here: " + Plain.number(medianSPerM, 0)
                + " s for each metre of width (median of " + perWidthM.size() + " visits of the round) times "
                + Plain.number(widthM.getAsDouble(), 1) + " m";
        return Checked.of(new Expected(Plain.ceil(medianSPerM * widthM.getAsDouble()), from));
    }

    private Checked<Usable> usable(Site site) {
        OptionalDouble ambient = site.conditions().conductivityUsCm();
        if (packSeconds.isEmpty()) {
            return Checked.failed(problem(
                    "pack-seconds-missing", site, "conductivity_us_cm", "pack_seconds.csv is empty", "fill it in"));
        }
        if (ambient.isEmpty()) {
            PackSeconds least = packSeconds.stream()
                    .min(Comparator.comparing(PackSeconds::usableS))
                    .orElseThrow();
            return Checked.of(new Usable(least.usableS(), "conductivity not known, so the least of the table"));
        }
        Optional<PackSeconds> band = packSeconds.stream()
                .filter(row -> ambient.getAsDouble() <= row.conductivityMaxUsCm())
                .findFirst();
        return band.map(row -> Checked.of(new Usable(
                        row.usableS(),
                        Plain.number(ambient.getAsDouble(), 1) + " µS/cm, row up to "
                                + Plain.number(row.conductivityMaxUsCm(), 1))))
                .orElseGet(() -> Checked.failed(aboveTable(site, ambient.getAsDouble())));
    }

    private Problem aboveTable(Site site, double ambientUsCm) {
        double top = packSeconds.get(packSeconds.size() - 1).conductivityMaxUsCm();
        return problem(
                "conductivity-above-packs",
                site,
                "conductivity_us_cm",
                Plain.number(ambientUsCm, 1) + " µS/cm is above the last row of pack_seconds.csv ("
                        + Plain.number(top, 1) + "): packs run down faster there than anyone has written down",
                "add a row that was measured in such water, or use another method");
    }

    private static Problem problem(String code, Site site, String column, String found, String remedy) {
        return Problem.error(
                code,
                SourcePlace.part("sites.csv", site.id()).column(column),
                found + ", so the number of packs cannot be worked out",
                "what the number of packs rests on",
                remedy);
    }
}
