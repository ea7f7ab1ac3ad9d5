package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.effort.BatteryEnergy;
import org.wadeplan.planner.effort.CatchRate;
import org.wadeplan.planner.effort.WelfareSums;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Sums to check one's own against: catch rates, buckets, baths, pack minutes. */
@Command(
        name = "sums",
        mixinStandardHelpOptions = true,
        description =
                "check figures, never a recommendation: catch rate (--fish --length-m --width-m --shock-s), buckets"
                        + " (--fish --per-bucket), anaesthetic bath (--dose-mg-l --bath-l --stock-mg-ml), pack minutes (--mean-w"
                        + " --pack-wh --health-pct)")
final class EffortSumsCommand implements Callable<Integer> {

    private static final String COMMAND = "wadeplan effort sums";

    @Option(names = "--fish", paramLabel = "N", description = "fish counted")
    private Optional<Integer> fish = Optional.empty();

    @Option(names = "--length-m", paramLabel = "M", description = "length of the reach")
    private Optional<Double> lengthM = Optional.empty();

    @Option(names = "--width-m", paramLabel = "M", description = "mean wetted width")
    private Optional<Double> widthM = Optional.empty();

    @Option(names = "--shock-s", paramLabel = "S", description = "button seconds")
    private Optional<Double> shockS = Optional.empty();

    @Option(
            names = "--per-bucket",
            paramLabel = "N",
            description = "the most fish that your code lets into one bucket (larger fish: fewer)")
    private Optional<Integer> perBucket = Optional.empty();

    @Option(names = "--dose-mg-l", paramLabel = "MG_L", description = "dose by the permit and the product's own label")
    private Optional<Double> doseMgL = Optional.empty();

    @Option(names = "--bath-l", paramLabel = "L", description = "water in the bath")
    private Optional<Double> bathL = Optional.empty();

    @Option(names = "--stock-mg-ml", paramLabel = "MG_ML", description = "strength of the stock, from its label")
    private Optional<Double> stockMgMl = Optional.empty();

    @Option(names = "--mean-w", paramLabel = "W", description = "mean output of the unit")
    private Optional<Double> meanW = Optional.empty();

    @Option(names = "--pack-wh", paramLabel = "WH", description = "energy of a healthy pack")
    private Optional<Double> packWh = Optional.empty();

    @Option(names = "--health-pct", paramLabel = "PCT", description = "health of the pack (default: ${DEFAULT-VALUE})")
    private double healthPct = 100;

    @Option(names = "--json", description = "print one JSON document on standard output")
    private boolean json;

    private final Console console;

    EffortSumsCommand(Console console) {
        this.console = console;
    }

    /** One sum: what, how much, in which unit. */
    record Sum(String what, double value, String unit) {

        String line() {
            return what + ": " + String.format(Locale.ROOT, "%.4f", value).replaceAll("\\.?0+$", "") + " " + unit;
        }
    }

    @Override
    public Integer call() {
        Optional<Problem> wrong = wrong();
        List<Sum> sums = wrong.isPresent() ? List.of() : sums();
        if (wrong.isPresent() || sums.isEmpty()) {
            console.stopped(json, COMMAND, wrong.orElseGet(EffortSumsCommand::nothingAsked));
            return ExitCode.USAGE;
        }
        if (json) {
            console.out().print(JsonDocument.text(COMMAND, "", List.of(), sums));
        } else {
            sums.forEach(sum -> console.line(sum.line()));
            EffortText.cautions(WelfareSums.CAUTIONS).forEach(console::line);
        }
        return ExitCode.FINE;
    }

    private Optional<Problem> wrong() {
        return Stream.of(
                        fish.filter(count -> count < 0).flatMap(count -> SumInputs.aboveZero("--fish", count)),
                        lengthM.flatMap(value -> SumInputs.aboveZero("--length-m", value)),
                        widthM.flatMap(value -> SumInputs.aboveZero("--width-m", value)),
                        shockS.flatMap(value -> SumInputs.aboveZero("--shock-s", value)),
                        perBucket.flatMap(value -> SumInputs.aboveZero("--per-bucket", value)),
                        doseMgL.flatMap(value -> SumInputs.aboveZero("--dose-mg-l", value)),
                        bathL.flatMap(value -> SumInputs.aboveZero("--bath-l", value)),
                        stockMgMl.flatMap(value -> SumInputs.aboveZero("--stock-mg-ml", value)),
                        meanW.flatMap(value -> SumInputs.aboveZero("--mean-w", value)),
                        packWh.flatMap(value -> SumInputs.aboveZero("--pack-wh", value)),
                        SumInputs.between("--health-pct", healthPct, 0, 100.000001))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Problem nothingAsked() {
        return Problem.error(
                "wrong-use",
                SourcePlace.file("effort sums"),
                "no sum has all of its numbers",
                "the options of one sum together, as the help groups them",
                "see wadeplan effort sums --help");
    }

    private List<Sum> sums() {
        List<Sum> sums = new ArrayList<>();
        if (fish.isPresent() && lengthM.isPresent() && widthM.isPresent() && shockS.isPresent()) {
            CatchRate rate = new CatchRate(fish.get(), lengthM.get(), widthM.get(), shockS.get());
            sums.add(
                    new Sum("density of this pass (an index, not how many there are)", rate.per100M2(), "fish/100 m²"));
            sums.add(new Sum("catch rate", rate.perHour(), "fish/h of button time"));
        }
        if (fish.isPresent() && perBucket.isPresent()) {
            sums.add(new Sum(
                    "buckets", WelfareSums.buckets(fish.get(), perBucket.get()), "with that many fish or fewer"));
        }
        if (doseMgL.isPresent() && bathL.isPresent()) {
            sums.add(new Sum("substance in the bath", WelfareSums.powderG(doseMgL.get(), bathL.get()), "g"));
            stockMgMl.ifPresent(stock -> sums.add(
                    new Sum("stock in the bath", WelfareSums.stockMl(doseMgL.get(), bathL.get(), stock), "mL")));
        }
        if (meanW.isPresent() && packWh.isPresent()) {
            double usableWh = BatteryEnergy.usableWh(packWh.get(), 0.8, 0.8, healthPct);
            sums.add(new Sum(
                    "pack minutes (0.8 of it drawn, 0.8 of that reaching the water)",
                    BatteryEnergy.minutes(usableWh, meanW.get()),
                    "min"));
        }
        return sums;
    }
}
