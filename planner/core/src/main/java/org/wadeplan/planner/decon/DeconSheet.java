package org.wadeplan.planner.decon;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.week.DeconTask;

/** Gathers what a sheet must show for a cleaning of the week. */
public final class DeconSheet {

    private static final List<String> TABLES =
            List.of("treatments.csv", "decon_steps.csv", "decon_resources.csv", "water_pests.csv");
    private static final List<String> SIGN_BOXES = List.of(
            "nothing visible left: looked by, time",
            "dry to the touch inside and out: seen by, date and time",
            "released: date and time",
            "exceptions and their reason",
            "done by, signature",
            "checked by a second person, signature");

    private DeconSheet() {}

    public static DeconSheetFacts of(Round round, DeconTask task) {
        List<ChemicalCaution> cautions = ChemicalCautions.shipped().about(agents(round, task));
        return new DeconSheetFacts(
                task.kitSet(),
                task.crew(),
                task.fromWaters(),
                List.copyOf(pests(task)),
                lines(round, task),
                SIGN_BOXES,
                cautions.stream()
                        .filter(caution -> !caution.topic().equals("dispose"))
                        .toList(),
                disposal(cautions),
                task.covers().stream().map(DeconSheet::evidence).toList(),
                task.crewFree(),
                task.released(),
                task.reason(),
                ruleVersion(round));
    }

    private static SortedSet<String> pests(DeconTask task) {
        SortedSet<String> pests = new TreeSet<>();
        task.covers().forEach(cover -> pests.add(cover.pest()));
        return pests;
    }

    private static SortedSet<String> agents(Round round, DeconTask task) {
        SortedSet<String> agents = new TreeSet<>();
        for (Treatment row : round.biosecurity().treatments()) {
            if (task.covers().stream().anyMatch(cover -> cover.treatment().equals(row.id()))) {
                agents.add(row.agent());
            }
        }
        return agents;
    }

    private static List<DeconSheetFacts.Line> lines(Round round, DeconTask task) {
        BathMakeUp makeUp = new BathMakeUp(round.biosecurity().resources());
        List<DeconSheetFacts.Line> lines = new ArrayList<>();
        Instant start = task.start();
        for (DeconStep step : task.steps()) {
            lines.add(new DeconSheetFacts.Line(
                    step.step(),
                    step.label(),
                    start,
                    step.minutes(),
                    step.crewBusy(),
                    step.resource(),
                    step.target(),
                    makeUp.words(step),
                    boxes(step)));
            start = start.plus(Duration.ofMinutes(step.minutes()));
        }
        return List.copyOf(lines);
    }

    private static List<String> boxes(DeconStep step) {
        List<String> boxes = new ArrayList<>(
                switch (step.step()) {
                    case "soak", "freeze" -> List.of("in, time", "out, time");
                    case "spray" -> List.of("wet from, time", "wet until, time");
                    case "dry" -> List.of("dry to the touch, time", "dry until, date and time");
                    default -> List.of("done, time");
                });
        String target = step.target().orElse("");
        if (target.contains("°C")) {
            boxes.addAll(List.of("°C at start", "°C at end"));
        }
        if (!target.isEmpty() && !target.matches("[-0-9.]+ °C")) {
            boxes.addAll(List.of("batch, expiry", "made up, time", "strength at start", "strength at end"));
        }
        return List.copyOf(boxes);
    }

    private static String disposal(List<ChemicalCaution> cautions) {
        return String.join(
                " ",
                cautions.stream()
                        .filter(caution -> caution.topic().equals("dispose"))
                        .map(caution -> caution.text() + " (" + caution.source() + ")")
                        .toList());
    }

    private static String evidence(Turnaround.Cover cover) {
        return cover.pest() + " on " + Words.lower(cover.material()) + " items: " + cover.treatment() + ", grade "
                + cover.grade() + " (" + cover.source() + ")";
    }

    /** The tables by name with the first ten characters of each one's hash. */
    private static String ruleVersion(Round round) {
        Map<String, String> hashes = round.hash().byFile();
        List<String> versions = new ArrayList<>();
        for (String table : TABLES) {
            Optional.ofNullable(hashes.get(table)).ifPresent(hash -> versions.add(table + " " + brief(hash)));
        }
        return versions.isEmpty() ? "round " + round.hash().brief() : String.join(", ", versions);
    }

    private static String brief(String hash) {
        return hash.substring(0, Math.min(10, hash.length()));
    }
}
