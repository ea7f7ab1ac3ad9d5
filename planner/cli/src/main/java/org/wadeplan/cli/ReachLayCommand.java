package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.planner.plan.ReachLayout;
import org.wadeplan.planner.reach.GroundLayout;
import org.wadeplan.planner.reach.LaidReaches;
import org.wadeplan.planner.reach.SitePastStart;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Where each site's reach and stakes lie. */
@Command(
        name = "lay",
        mixinStandardHelpOptions = true,
        description =
                "lay each site's reach from its downstream start, with its stakes, measured along the stream line")
final class ReachLayCommand extends RoundCommand {

    @Option(names = "--stakes", description = "list every stake, not only start and end")
    private boolean everyStake;

    ReachLayCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        Checked<List<Reach>> laid = ReachLayout.lay(round);
        List<Reach> reaches = laid.value().orElse(List.of());
        List<String> text = new ArrayList<>();
        text.add(round.terrain().crs().words());
        TextTable table =
                new TextTable("site", "stake", "upstream_m", "from_mouth_m", "east_m", "north_m", "lat_deg", "lon_deg");
        for (Reach reach : reaches) {
            List<Stake> shown = everyStake ? reach.stakes() : List.of(reach.start(), reach.end());
            shown.forEach(stake -> addRow(table, reach.site(), stake));
        }
        text.addAll(table.lines());
        LaidReaches all = LaidReaches.of(round, reaches);
        text.addAll(new LaidReachText(round, all).lines());
        text.addAll(GroundText.lines(round, all.grounds()));
        text.add(reaches.size() + " reaches" + length(round) + ". Stakes ± "
                + number(round.header().stakeUncertaintyM(), 0)
                + " m by handheld; lay out sub-reaches by tape along the channel.");
        List<Problem> findings = new ArrayList<>(laid.problems());
        findings.addAll(SitePastStart.flagged(all.pastStarts()));
        findings.addAll(GroundLayout.flagged(round, all.grounds()));
        return show(round, findings, all, text);
    }

    private static String length(Round round) {
        ReachProtocol protocol = round.header().reach().protocol();
        return protocol.fixedRule()
                .map(rule -> " of " + number(rule.lengthM(), 0) + " m")
                .orElse(", " + protocol.words());
    }

    private static void addRow(TextTable table, String site, Stake stake) {
        table.row(
                site,
                stake.name(),
                number(stake.upstreamM(), 2),
                number(stake.fromMouthM(), 1),
                number(stake.at().eastM(), 1),
                number(stake.at().northM(), 1),
                number(stake.lonLat().latDeg(), 5),
                number(stake.lonLat().lonDeg(), 5));
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
