package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.planner.effort.Comparability;
import org.wadeplan.planner.effort.Compared;
import org.wadeplan.planner.effort.Compared.Likeness;
import org.wadeplan.planner.effort.EffortSheet;
import org.wadeplan.planner.effort.ElectricCautions;
import org.wadeplan.planner.effort.PaceStep;
import org.wadeplan.planner.effort.StartSettings;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.VoltageCeiling;

/** What was done at the site last time, and what that means for today. */
final class LastTime {

    /** Shown even where they agree: what is set, and what it is set by. */
    private static final Set<String> ALWAYS_SHOWN = Set.of("settings", "effort", "ambient conductivity", "voltage");

    /** One row, "settings", holds what is kept of these. */
    private static final Set<String> KEPT = Set.of("frequency", "pulse", "duty");

    private static final String NO_CEILING =
            "No row of voltage_ceilings.csv covers this water: read the ceiling off the permit and the code.";

    private final PlanSource source;
    private final SiteDay visit;
    private final Optional<PastVisit> last;
    private final Optional<StartSettings> settings;
    private final Optional<EffortSheet> sheet;

    record ComparedRow(String what, String last, String today, String like) {}

    LastTime(PlanSource source, SiteDay visit) {
        this.source = source;
        this.visit = visit;
        this.last = source.lastVisit(visit.site().id(), visit.method());
        this.settings = source.plan().effort(visit.site().id()).flatMap(VisitEffort::settings);
        this.sheet = source.plan()
                .effort(visit.site().id())
                .map(effort -> EffortSheet.of(
                        source.round(),
                        visit.site(),
                        effort,
                        visit.date(),
                        source.subReaches(visit.site().id())));
    }

    List<Fact> facts() {
        if (last.isEmpty()) {
            return List.of(new Fact("Last time", "no earlier visit is on record"));
        }
        PastVisit past = last.get();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                source.clock().day(past.date()),
                past.method() + " " + past.part().word()));
        facts.add(new Fact("Time on site", Figures.known(past.onSiteMin(), "min")));
        facts.add(new Fact("Width, depth", widthAndDepth(past)));
        if (settings.isEmpty()) {
            facts.add(new Fact("Conductivity", conductivity(past)));
            facts.add(new Fact("Water", Figures.known(past.waterTempC(), "°C")));
        }
        facts.add(new Fact("Crew", Figures.known(past.crewSize(), "people")));
        past.note().ifPresent(note -> facts.add(new Fact("Note", note)));
        return facts;
    }

    private static String widthAndDepth(PastVisit past) {
        return "mean width " + Figures.known(past.widthM(), "m") + ", deepest " + Figures.known(past.maxDepthM(), "m");
    }

    private static String conductivity(PastVisit past) {
        String basis = past.conductivityBasis()
                .map(known -> known == ConductivityBasis.AMBIENT ? "ambient" : "referred to 25 °C")
                .orElse("basis not known");
        return Figures.known(past.conductivityUsCm(), "µS/cm") + " (" + basis + ")";
    }

    /** Blank for methods without a current. */
    String settingsLine() {
        if (visit.kind(source) != MethodKind.ELECTROFISHING) {
            return "";
        }
        return settings.map(this::settingsWords)
                .orElse("No settings are on record. Start at the lowest output and raise it only as far as fish need.");
    }

    private String settingsWords(StartSettings start) {
        if (start.adviceVoltageV().isEmpty()) {
            return start.explanation();
        }
        return "Advice, not an order: about " + start.adviceVoltageV().getAsInt() + " V in today's water ("
                + ambient(start.todayAmbientUsCm()) + "), from last time's "
                + Figures.plain(start.last().voltageV()) + " V by power transfer (Kolz 1989, Miranda and Dolan 2003). "
                + start.ceiling()
                        .map(row -> ceiling(row, start.adviceVoltageV().getAsInt()))
                        .orElse(NO_CEILING)
                + " Raise voltage first, only as far as fish need; the operator decides, code and permit come first.";
    }

    private static String ceiling(VoltageCeiling row, int adviceV) {
        return "Ceiling " + Figures.plain(row.voltageMaxV()) + " V (" + row.source() + ")." + testFrom(row, adviceV);
    }

    private static String testFrom(VoltageCeiling row, int adviceV) {
        if (row.voltageStartV().isEmpty()) {
            return "";
        }
        double startV = row.voltageStartV().getAsDouble();
        return adviceV < startV ? " Test from below the advice up." : " Test from " + Figures.plain(startV) + " V up.";
    }

    private static String ambient(OptionalDouble conductivityUsCm) {
        return conductivityUsCm.isPresent()
                ? Figures.plain(conductivityUsCm.getAsDouble()) + " µS/cm ambient"
                : "conductivity not known";
    }

    List<String> cautions() {
        if (visit.kind(source) != MethodKind.ELECTROFISHING) {
            return List.of();
        }
        List<String> cautions = new ArrayList<>(ElectricCautions.ALWAYS);
        settings.ifPresent(start -> cautions.addAll(start.cautions()));
        return cautions;
    }

    String comparability() {
        return sheet.map(EffortSheet::comparability)
                .orElseGet(() ->
                        Comparability.of(source.round(), visit.site(), visit.method(), visit.date(), Optional.empty()))
                .sentence();
    }

    /** Last time and today where they differ, and always what is set; the comparability line names what agrees. */
    List<ComparedRow> compared() {
        return sheet.stream()
                .flatMap(known -> Stream.concat(
                        known.comparability().rows().stream(),
                        known.settingsRows().stream().filter(row -> !KEPT.contains(row.what()))))
                .filter(row -> row.likeness() != Likeness.SAME || ALWAYS_SHOWN.contains(row.what()))
                .map(row -> new ComparedRow(row.what(), row.last(), row.today(), like(row)))
                .toList();
    }

    private static String like(Compared row) {
        String word = row.likeness().word();
        return row.difference().isEmpty() ? word : word + ": " + row.difference();
    }

    /** {@code Pace: button seconds by the end of A 215, B 430}; blank where none are known. */
    String pace() {
        List<PaceStep> steps = sheet.map(EffortSheet::pace).orElse(List.of());
        return steps.isEmpty()
                ? ""
                : "Pace: button seconds by the end of "
                        + steps.stream()
                                .map(step -> step.letter() + " " + step.totalS())
                                .collect(Collectors.joining(", "))
                        + ".";
    }
}
