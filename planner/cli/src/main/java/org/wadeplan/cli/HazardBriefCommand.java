package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.hazard.BriefingText;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The briefing to read aloud before going in. */
@Command(
        name = "brief",
        mixinStandardHelpOptions = true,
        description = "the briefing for a site's visit as planned: hazards, controls, stop limits, emergency facts")
final class HazardBriefCommand extends RoundCommand {

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(names = "--site", paramLabel = "S", description = "the site (default: every planned visit)")
    private Optional<String> site = Optional.empty();

    HazardBriefCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (site.isPresent() && round.site(site.get()).isEmpty()) {
            return unknown(
                    "--site", site.get(), round.sites().stream().map(Site::id).toList());
        }
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = RoundPlanner.plan(round, search.planOptions(), new ProgressLine(console()));
        List<VisitBriefing> wanted = plan.briefings().stream()
                .filter(briefing -> site.map(briefing.site()::equals).orElse(true))
                .toList();
        List<String> text = new ArrayList<>();
        for (VisitBriefing briefing : wanted) {
            text.addAll(BriefingText.lines(briefing));
            text.add("");
        }
        if (wanted.isEmpty()) {
            text.add("No visit is planned: " + site.orElse("the whole round") + ".");
            text.add("Why: wadeplan week plan " + folderWords() + " --no-write");
        }
        return show(round, List.of(), wanted, text);
    }
}
