package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.decon.record.ReleaseAnswer;
import org.wadeplan.planner.decon.record.ReleaseCheck;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.WeekPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whether a kit set may leave for a water, by the cleanings on record. */
@Command(
        name = "release",
        mixinStandardHelpOptions = true,
        description = "may this kit set leave for that water at that time, by the cleanings on record; 1 where not")
final class DeconReleaseCommand extends RoundCommand {

    @Option(names = "--kit-set", paramLabel = "K", required = true, description = "the kit set that is to leave")
    private String kitSet = "";

    @Option(names = "--water", paramLabel = "W", required = true, description = "the water that it is to go into")
    private String water = "";

    @Mixin
    private SearchOptions search = new SearchOptions();

    DeconReleaseCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        List<String> kitSets = round.store().kitSets().stream().map(KitSet::id).toList();
        if (!kitSets.contains(kitSet)) {
            return unknown("--kit-set", kitSet, kitSets);
        }
        List<String> waters = round.waters().stream().map(Water::id).toList();
        if (!waters.contains(water)) {
            return unknown("--water", water, waters);
        }
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        WeekPlan week = RoundPlanner.inForce(round, search.planOptions(), new ProgressLine(console()))
                .week();
        ReleaseAnswer answer = ReleaseCheck.of(round, week).answer(kitSet, water, now());
        return show(round, findings(answer), answer, new ReleaseText(round, answer).lines());
    }

    private static List<Problem> findings(ReleaseAnswer answer) {
        List<Problem> findings = new ArrayList<>();
        for (String why : answer.missing()) {
            findings.add(Problem.error(
                    "release-refused",
                    SourcePlace.part("cleanings.csv", answer.kitSet() + " to " + answer.toWater()),
                    why,
                    "an accepted cleaning on record for every pest that counts, on every material",
                    answer.waysOut().isEmpty() ? "keep it in" : answer.waysOut().get(0)));
        }
        return findings;
    }
}
