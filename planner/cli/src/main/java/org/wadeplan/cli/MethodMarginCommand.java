package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.margin.InputMargin;
import org.wadeplan.planner.method.margin.MarginFinder;
import org.wadeplan.planner.method.margin.MarginWords;
import org.wadeplan.planner.method.margin.SiteMargin;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How near each site is to another method. */
@Command(
        name = "margin",
        mixinStandardHelpOptions = true,
        description =
                "how near a site is to another method: the smallest change of each input, the most plausible change"
                        + " of all together, and the chance of each outcome under the stated uncertainties")
final class MethodMarginCommand extends RoundCommand {

    @Option(names = "--site", paramLabel = "S", description = "one site only (default: every site, in short)")
    private Optional<String> site = Optional.empty();

    @Option(
            names = "--sd",
            paramLabel = "INPUT=SD",
            description =
                    "a standard uncertainty that sites.csv does not state, such as clarity_m=0.1; may be repeated")
    private Map<String, Double> stated = new LinkedHashMap<>();

    MethodMarginCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (site.isPresent() && round.site(site.get()).isEmpty()) {
            return unknown(
                    "--site", site.get(), round.sites().stream().map(Site::id).toList());
        }
        List<String> numbers =
                round.methodTable().inputs().stream().map(TableInput::name).toList();
        for (String input : stated.keySet()) {
            if (!numbers.contains(input)) {
                return unknown("--sd", input, numbers);
            }
        }
        MarginFinder finder = MarginFinder.of(round.methodTable());
        List<SiteMargin> margins = SiteCase.of(round).stream()
                .filter(one -> site.isEmpty() || one.site().equals(site.get()))
                .map(one -> finder.margin(one.with(stated)))
                .toList();
        List<String> text = new ArrayList<>();
        text.add("Method table " + round.methodTable().file() + " on the planned conditions in sites.csv");
        text.addAll(site.isPresent() ? whole(margins.get(0)) : list(margins));
        text.addAll(TextTable.hanging("Chances: ", SiteMargin.METHOD + "."));
        text.add("Measure again at the water: a reading on the other side of a limit gives another method.");
        return show(round, List.of(), margins, text);
    }

    private static List<String> whole(SiteMargin margin) {
        List<String> text = new ArrayList<>();
        if (!margin.unknown().isEmpty()) {
            text.add(margin.site() + ": not known: " + String.join(", ", margin.unknown())
                    + "; margins need every value that the table asks for. See: wadeplan method decide ROUND");
            return text;
        }
        text.add(margin.site() + ": " + margin.outcome() + ", rules matching: " + margin.rules());
        TextTable table = new TextTable("input", "smallest change that gives another outcome");
        for (InputMargin input : margin.inputs()) {
            table.row(input.words(), flips(input));
        }
        text.addAll(table.lines());
        margin.joint()
                .ifPresent(joint -> text.addAll(TextTable.hanging(
                        "Most plausible change of all together: ",
                        String.join(", ", joint.changes()) + " gives " + joint.outcome() + "; "
                                + String.format(Locale.ROOT, "%.2f", joint.uncertainties())
                                + " standard uncertainties away")));
        text.add("Chances: " + MarginWords.chances(margin)
                + (margin.uncertain().isEmpty() ? " (no uncertainty is stated)" : ""));
        MarginWords.advice(margin).forEach(line -> text.addAll(TextTable.hanging("", line)));
        return text;
    }

    private static String flips(InputMargin input) {
        return input.flips().isEmpty()
                ? "none: no possible value gives another outcome"
                : String.join(
                        "; ", input.flips().stream().map(MarginWords::flip).toList());
    }

    private static List<String> list(List<SiteMargin> margins) {
        TextTable table = new TextTable("site", "outcome", "chances", "nearest change, in uncertainties");
        for (SiteMargin margin : margins) {
            table.row(
                    margin.site(),
                    margin.unknown().isEmpty() ? margin.outcome() : "not known: " + String.join(", ", margin.unknown()),
                    MarginWords.chances(margin),
                    margin.joint()
                            .map(joint -> String.join(", ", joint.changes()) + " gives " + joint.outcome() + " ("
                                    + String.format(Locale.ROOT, "%.1f", joint.uncertainties()) + ")")
                            .orElse("-"));
        }
        return table.lines();
    }
}
