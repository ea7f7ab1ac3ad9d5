package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.effort.ArrivalReading;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.EffortSheet;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.plan.ReachLayout;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What follows from each site's method: time, button seconds, settings to start from, packs, comparability. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "time on site, button seconds, last settings with advice for today's water, packs, and how far a"
                + " repeat visit compares; with --site the whole sheet of one site. Advice is never an order: licensed"
                + " operators decide")
final class EffortPlanCommand extends RoundCommand {

    @Option(names = "--site", paramLabel = "SITE", description = "the whole sheet of this site")
    private Optional<String> site = Optional.empty();

    @Option(
            names = "--conductivity",
            paramLabel = "US_CM",
            description = "conductivity as the meter shows it on arrival, µS/cm; needs --site and --basis")
    private Optional<Double> conductivityUsCm = Optional.empty();

    @Option(
            names = "--basis",
            paramLabel = "BASIS",
            description = "which was read: ambient (at the water's own temperature) or 25C (specific conductance)")
    private Optional<String> basis = Optional.empty();

    @Option(
            names = "--water-temp",
            paramLabel = "C",
            description = "the water's temperature on arrival, °C; needs --site")
    private Optional<Double> waterTempC = Optional.empty();

    EffortPlanCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        List<String> known = round.sites().stream().map(Site::id).toList();
        if (site.isPresent() && !known.contains(site.get())) {
            return unknown("--site", site.get(), known);
        }
        if (site.isEmpty() && (conductivityUsCm.isPresent() || basis.isPresent() || waterTempC.isPresent())) {
            return unknown("--site", "", known);
        }
        Checked<Round> today = arrived(round);
        if (today.value().isEmpty()) {
            return refused(today.problems());
        }
        return show(round, today.value().get());
    }

    private int show(Round planned, Round round) {
        List<MethodDecision> decisions = MethodChooser.decide(round).stream()
                .filter(decision -> site.isEmpty() || decision.site().equals(site.get()))
                .toList();
        List<EffortSheet> sheets = sheets(round, decisions);
        List<String> text = new ArrayList<>(flipped(MethodChooser.decide(planned), decisions));
        text.addAll(
                site.isPresent()
                        ? sheets.stream()
                                .flatMap(sheet -> EffortText.sheet(round, sheet).stream())
                                .toList()
                        : EffortText.overview(round, sheets));
        if (sheets.isEmpty()) {
            text.add("No visit follows here; method decide says why.");
        }
        return show(round, EffortPlanner.findings(round, decisions), sheets, text);
    }

    private static List<EffortSheet> sheets(Round round, List<MethodDecision> decisions) {
        List<Reach> reaches = ReachLayout.lay(round).value().orElse(List.of());
        List<EffortSheet> sheets = new ArrayList<>();
        for (VisitEffort effort : EffortPlanner.plan(round, decisions)) {
            int subReaches = reaches.stream()
                    .filter(reach -> reach.site().equals(effort.site()))
                    .mapToInt(reach -> reach.subReaches().size())
                    .findFirst()
                    .orElse(0);
            round.site(effort.site())
                    .map(at -> EffortSheet.of(round, at, effort, round.header().firstDay(), subReaches))
                    .ifPresent(sheets::add);
        }
        return sheets;
    }

    /** Says where what was measured on arrival gives another method than what was planned. */
    private static List<String> flipped(List<MethodDecision> planned, List<MethodDecision> measured) {
        return measured.stream()
                .flatMap(now -> planned.stream()
                        .filter(before -> before.site().equals(now.site()))
                        .filter(before -> !MethodWords.method(before).equals(MethodWords.method(now)))
                        .map(before -> "With what was measured the table gives " + MethodWords.method(now) + ", not "
                                + MethodWords.method(before) + " as planned."))
                .toList();
    }

    /** The round with what was measured on arrival in place of what was planned. */
    private Checked<Round> arrived(Round round) {
        if (site.isEmpty()) {
            return Checked.of(round);
        }
        ArrivalReading reading = new ArrivalReading(number(conductivityUsCm), basis, number(waterTempC));
        return round.site(site.get())
                .map(planned ->
                        reading.at(planned, round.header().conductivityRule()).map(round::with))
                .orElseGet(() -> Checked.of(round));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
