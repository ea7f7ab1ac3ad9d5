package org.wadeplan.cli;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.LoadTickFile;
import org.wadeplan.planner.kit.TickCheck;
import org.wadeplan.planner.kit.TickObjection;
import org.wadeplan.planner.kit.TickOutcome;
import org.wadeplan.planner.kit.TickRequest;
import org.wadeplan.planner.plan.PlanJson;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Ticks an item or kit set of a crew-day's load list as loaded, or takes the tick back. */
@Command(
        name = "tick",
        mixinStandardHelpOptions = true,
        description =
                "tick an item or kit set as loaded: refused where it is not clean and dry, not valid, out of service,"
                        + " with another crew or not on the list. Writes load_ticks.csv; --at says when it is loaded")
final class KitTickCommand extends RoundCommand {

    @Option(names = "--crew", paramLabel = "CREW", required = true, description = "the crew that loads")
    private String crew = "";

    @Option(names = "--date", paramLabel = "DATE", required = true, description = "its day, such as 2027-09-06")
    private LocalDate date = LocalDate.EPOCH;

    @Option(names = "--item", paramLabel = "ITEM", required = true, description = "serial, lot or kit set")
    private String item = "";

    @Option(names = "--by", paramLabel = "NAME", description = "who ticks (default: the crew)")
    private Optional<String> by = Optional.empty();

    @Option(names = "--override-by", paramLabel = "NAME", description = "who lets it go all the same")
    private Optional<String> overrideBy = Optional.empty();

    @Option(names = "--reason", paramLabel = "TEXT", description = "why it is let go; goes with --override-by")
    private Optional<String> reason = Optional.empty();

    @Option(names = "--untick", description = "take the tick back")
    private boolean untick;

    @Mixin
    private SearchOptions search = new SearchOptions();

    KitTickCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (untick) {
            return takeBack(round);
        }
        boolean named = overrideBy.filter(name -> !name.isBlank()).isPresent();
        boolean reasoned = reason.filter(text -> !text.isBlank()).isPresent();
        if (named != reasoned) {
            return wrongUse(
                    "half an override: " + (named ? "a name without a reason" : "a reason without a name"),
                    "--override-by NAME together with --reason TEXT",
                    "give both, or neither");
        }
        if (refusedByTable(round)) {
            return ExitCode.FINDINGS;
        }
        RoundPlan plan = plan(round);
        TickRequest request = new TickRequest(
                crew,
                date,
                item,
                now(),
                by.filter(name -> !name.isBlank()).orElse("crew " + crew),
                named && reasoned
                        ? Optional.of(new TickRequest.TickOverride(overrideBy.orElse(""), reason.orElse("")))
                        : Optional.empty());
        return TickCheck.check(round, plan.week(), plan.kit(), request)
                .fold(accepted -> write(round, accepted), refused -> say(round, refused));
    }

    /** The agreed week; else the plan that was written into the folder; else one that is planned now. */
    private RoundPlan plan(Round round) {
        if (round.log().agreed().isEmpty()) {
            var file = source().folder().resolve("plan.json");
            Optional<RoundPlan> written =
                    Files.isRegularFile(file) ? PlanJson.read(file).value() : Optional.empty();
            if (written.isPresent()) {
                return written.get();
            }
        }
        return RoundPlanner.inForce(round, search.planOptions(), new ProgressLine(console()));
    }

    private int write(Round round, TickOutcome.Accepted accepted) {
        try {
            LoadTickFile.add(round.folder(), accepted.tick());
        } catch (DiskException fault) {
            return notWritten(fault);
        }
        List<String> text = new ArrayList<>();
        text.add("In: " + item + ", crew " + crew + ", " + date + ", ticked by "
                + accepted.tick().by() + ".");
        accepted.overridden().forEach(one -> text.addAll(TextTable.hanging("  let go: ", one.words())));
        accepted.tick()
                .overrideBy()
                .ifPresent(name -> text.addAll(TextTable.hanging(
                        "  by " + name + ": ", accepted.tick().overrideReason().orElse(""))));
        accepted.remarks().forEach(one -> text.addAll(TextTable.hanging("  note: ", one)));
        return show(round, List.of(), accepted, text);
    }

    private int say(Round round, TickOutcome.Refused refused) {
        List<Problem> problems = refused.objections().stream()
                .map(one -> Problem.error(
                        "tick-refused",
                        SourcePlace.part("load list", "crew " + crew + " " + date),
                        one.words(),
                        "",
                        one.remedy()))
                .toList();
        List<String> text = new ArrayList<>();
        text.add("Not ticked: " + item + " stays out.");
        text.addAll(TextTable.hanging(
                "  ",
                refused.overridable()
                        ? "Taking it all the same needs --override-by NAME and --reason TEXT, and is recorded."
                        : "No override helps: "
                                + refused.objections().stream()
                                        .filter(one -> !one.ground().overridable())
                                        .map(TickObjection::words)
                                        .findFirst()
                                        .orElse("")
                                + "."));
        return show(round, problems, refused, text);
    }

    private int takeBack(Round round) {
        Optional<LoadTick> tick = round.log().ticks().stream()
                .filter(one -> one.date().equals(date)
                        && one.crew().equalsIgnoreCase(crew)
                        && one.item().equalsIgnoreCase(item))
                .findFirst();
        if (tick.isEmpty()) {
            return wrongUse(
                    item + " is not ticked for crew " + crew + " on " + date,
                    "an item that is ticked",
                    "see the ticks with: wadeplan kit list " + folderWords());
        }
        try {
            LoadTickFile.remove(round.folder(), tick.get());
        } catch (DiskException fault) {
            return notWritten(fault);
        }
        return show(round, List.of(), tick.get(), List.of("Out again: " + item + ", crew " + crew + ", " + date + "."));
    }

    private int wrongUse(String found, String expected, String remedy) {
        return stopped(Problem.error("wrong-use", SourcePlace.file("kit tick"), found, expected, remedy));
    }
}
