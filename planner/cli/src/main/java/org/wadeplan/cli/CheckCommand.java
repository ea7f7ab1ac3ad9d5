package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.method.MethodTableCheck;
import org.wadeplan.planner.plan.ReachLayout;
import org.wadeplan.planner.reach.GroundLayout;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;

/** Every problem of a round folder, before anything is planned. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description =
                "every problem of the round folder at once, with file, line, column, what is allowed and what to do")
final class CheckCommand extends RoundCommand {

    CheckCommand(Console console) {
        super(console);
    }

    @Override
    boolean showsNotes() {
        return true;
    }

    @Override
    int run(Round round) {
        Checked<List<Reach>> laid = ReachLayout.lay(round);
        List<Reach> reaches = laid.value().orElse(List.of());
        List<Problem> findings = new ArrayList<>(laid.problems());
        findings.addAll(GroundLayout.flagged(round, GroundLayout.of(round, reaches)));
        findings.addAll(MethodTableCheck.problems(round.methodTable(), round));
        List<MethodDecision> decisions = MethodChooser.decide(round);
        findings.addAll(MethodFindings.of(round, decisions));
        findings.addAll(EffortPlanner.findings(round, decisions));
        List<String> text = new ArrayList<>(List.of(
                round.header().title() + ": " + round.hash().byFile().size() + " files read.",
                round.sites().size() + " sites, " + reaches.size() + " reaches laid, "
                        + round.terrain().network().lines().size() + " streams, "
                        + round.store().items().size() + " lines in the store, "
                        + round.people().size() + " people.",
                findings.isEmpty() && reading().isEmpty()
                        ? "No problem was found in these files. Whether they are true, only you can know."
                        : "Findings stand below, worst first.",
                "Permits, consents, certificates, people and kit are held against the days when the week is planned."));
        text.add("Next: wadeplan week plan " + folderWords());
        return show(round, findings, findings, text);
    }
}
