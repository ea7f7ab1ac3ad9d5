package org.wadeplan.cli;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.LedgerBreaches;
import org.wadeplan.planner.decon.ledger.LedgerReport;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What each kit set has touched and where it stands. */
@Command(
        name = "exposure",
        mixinStandardHelpOptions = true,
        description =
                "what each kit set and loose item touches, how it is treated, and for which waters it is released;"
                        + " with --at, where each stands at that moment")
final class DeconExposureCommand extends RoundCommand {

    @Option(names = "--kit-set", paramLabel = "K", description = "only this kit set, or this item of the store")
    private Optional<String> kitSet = Optional.empty();

    @Mixin
    private SearchOptions search = new SearchOptions();

    DeconExposureCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.inForce(round, search.planOptions(), new ProgressLine(console()));
        ExposureLedger ledger = ExposureLedger.of(round, plan.week(), plan.kit());
        if (kitSet.isPresent() && ledger.lane(kitSet.get()).isEmpty()) {
            return unknown(
                    "--kit-set",
                    kitSet.get(),
                    ledger.lanes().stream().map(Lane::id).toList());
        }
        ExposureLedger shown = kitSet.flatMap(ledger::lane)
                .map(lane -> new ExposureLedger(List.of(lane)))
                .orElse(ledger);
        LedgerReport report = LedgerReport.of(round, shown, WeekInForce.words(round), at());
        return show(
                round,
                new LedgerBreaches(round).of(shown),
                report,
                new ExposureText(round, kitSet.isPresent()).lines(report));
    }
}
