package org.wadeplan.planner.effort;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.PackPower;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.Site;

/**
 * How many packs to carry: button seconds expected, with a reserve, by what one pack gives in this water. That is read from
 * the round's table and, where pack and electrodes were measured, worked out from power too; the lesser of the two counts.
 */
final class BatteryPlan {

    private final List<PackSeconds> packSeconds;
    private final double reserveFactor;
    private final Optional<PackPower> packPower;

    /** What one pack gives, and where the figure comes from. */
    private record Usable(int usableS, String from) {}

    BatteryPlan(List<PackSeconds> packSeconds, double reserveFactor, Optional<PackPower> packPower) {
        this.packSeconds = packSeconds.stream()
                .sorted(Comparator.comparing(PackSeconds::conductivityMaxUsCm))
                .toList();
        this.reserveFactor = reserveFactor;
        this.packPower = packPower;
    }

    /** Whole packs, the reserve included; a problem where the table of packs leaves it open. */
    Checked<BatteryNeed> of(Site site, ShockTime shock, Optional<StartSettings> settings) {
        return byTable(site).map(table -> {
            Optional<Usable> power = settings.flatMap(this::byPower);
            return need(shock, power.filter(p -> p.usableS() < table.usableS()).orElse(table), power, table);
        });
    }

    private BatteryNeed need(ShockTime shock, Usable usable, Optional<Usable> power, Usable table) {
        double exact = reserveFactor * shock.p50S() / usable.usableS();
        int packs = Math.max(1, Plain.ceil(exact));
        String explanation = shock.basis() + ": " + shock.p50S() + " s of button time; with a reserve of "
                + Plain.number(reserveFactor, 2) + " times, by " + usable.usableS() + " s from a pack (" + usable.from()
                + "), that is " + Plain.number(exact, 2) + ", so " + packs + (packs == 1 ? " pack" : " packs")
                + power.map(other -> other.usableS() < table.usableS()
                                ? "; the table says " + table.usableS() + " s"
                                : "; by power " + other.usableS() + " s (" + other.from() + ")")
                        .orElse("");
        return new BatteryNeed(shock.p50S(), usable.usableS(), reserveFactor, packs, explanation);
    }

    /** Energy by mean power at the advised voltage; empty where any part of it is not known. */
    private Optional<Usable> byPower(StartSettings settings) {
        if (packPower.isEmpty()
                || settings.adviceVoltageV().isEmpty()
                || settings.todayAmbientUsCm().isEmpty()) {
            return Optional.empty();
        }
        PackPower pack = packPower.get();
        double voltageV = settings.adviceVoltageV().getAsInt();
        double ohm = PowerTransfer.resistanceOhm(
                pack.resistanceAt100Ohm(), settings.todayAmbientUsCm().getAsDouble());
        double meanW =
                PulseDuty.meanPowerW(voltageV, voltageV / ohm, settings.last().dutyPct());
        if (meanW <= 0) {
            return Optional.empty();
        }
        double usableWh = BatteryEnergy.usableWh(pack.packWh(), pack.depthOfDischarge(), pack.efficiency(), 100);
        String from =
                Plain.number(usableWh, 1) + " Wh at " + Plain.number(meanW, 0) + " W mean, by the advised settings";
        return Optional.of(
                new Usable((int) Math.max(1, Math.floor(60 * BatteryEnergy.minutes(usableWh, meanW))), from));
    }

    private Checked<Usable> byTable(Site site) {
        OptionalDouble ambient = site.conditions().conductivityUsCm();
        if (packSeconds.isEmpty()) {
            return Checked.failed(problem("pack-seconds-missing", site, "pack_seconds.csv is empty", "fill it in"));
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
                Plain.number(ambientUsCm, 1) + " µS/cm is above the last row of pack_seconds.csv ("
                        + Plain.number(top, 1) + "): packs run down faster there than anyone has written down",
                "add a row that was measured in such water, or use another method");
    }

    private static Problem problem(String code, Site site, String found, String remedy) {
        return Problem.error(
                code,
                SourcePlace.part("sites.csv", site.id()).column("conductivity_us_cm"),
                found + ", so the number of packs cannot be worked out",
                "what the number of packs rests on",
                remedy);
    }
}
