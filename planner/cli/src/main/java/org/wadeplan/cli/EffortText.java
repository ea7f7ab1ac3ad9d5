package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.planner.effort.Accumulation;
import org.wadeplan.planner.effort.Compared;
import org.wadeplan.planner.effort.Detection;
import org.wadeplan.planner.effort.EffortSheet;
import org.wadeplan.planner.effort.ElectricCautions;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.effort.StartSettings;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VoltageCeiling;

/** Effort in words: all sites in a table, or one site's whole sheet. */
final class EffortText {

    private static final String NONE = "-";

    private EffortText() {}

    static List<String> overview(Round round, List<EffortSheet> sheets) {
        List<String> text = new ArrayList<>();
        text.add("Half of visits are over in p50, four in five in p80; n is how many of the site's own visits speak.");
        TextTable times = new TextTable("site", "method", "part", "p50 min", "p80 min", "n", "p50 s", "p80 s", "packs");
        sheets.forEach(sheet -> sheet.effort().parts().forEach(part -> times.row(timeCells(sheet.effort(), part))));
        text.addAll(times.lines());
        text.add("");
        text.addAll(cautions(ElectricCautions.ALWAYS));
        TextTable settings = new TextTable("site", "last used", "last V", "advice V", "ceiling V", "cautions");
        sheets.stream()
                .filter(sheet -> sheet.effort().electric(round))
                .forEach(sheet -> settings.row(settingCells(sheet)));
        text.addAll(settings.lines());
        text.add(
                "Advice is never an order; the operator decides. effort plan ROUND --site SITE shows a site's whole sheet.");
        text.add("");
        text.addAll(detection(round));
        return text;
    }

    private static String[] timeCells(VisitEffort effort, PartEffort part) {
        return new String[] {
            effort.site(),
            effort.method(),
            part.part().word(),
            Integer.toString(part.p50Min()),
            Integer.toString(part.p80Min()),
            Integer.toString(part.pastVisits()),
            effort.shock().map(shock -> Integer.toString(shock.p50S())).orElse(NONE),
            effort.shock().map(shock -> Integer.toString(shock.p80S())).orElse(NONE),
            effort.batteries().map(need -> Integer.toString(need.packs())).orElse(NONE)
        };
    }

    private static String[] settingCells(EffortSheet sheet) {
        if (sheet.effort().settings().isEmpty()) {
            return new String[] {sheet.effort().site(), NONE, NONE, NONE, NONE, "no settings on record: start lowest"};
        }
        StartSettings start = sheet.effort().settings().get();
        return new String[] {
            sheet.effort().site(),
            start.lastDate().toString(),
            Quantity.words(start.last().voltageV(), ""),
            words(start.adviceVoltageV()),
            start.ceiling().map(EffortText::ceiling).orElse("not on file"),
            String.join(" ", start.cautions())
        };
    }

    private static String words(OptionalInt volts) {
        return volts.isPresent() ? Integer.toString(volts.getAsInt()) : "none";
    }

    private static String ceiling(VoltageCeiling row) {
        return Quantity.words(row.voltageMaxV(), "");
    }

    static List<String> sheet(Round round, EffortSheet sheet) {
        VisitEffort effort = sheet.effort();
        List<String> text = new ArrayList<>();
        text.add("== " + effort.site() + ", " + effort.method());
        text.addAll(cautions(sheet.cautions()));
        for (PartEffort part : effort.parts()) {
            text.addAll(TextTable.hanging(
                    part.part().word() + ": ",
                    "p50 " + part.p50Min() + " min, p80 " + part.p80Min() + " min, n " + part.pastVisits() + ": "
                            + part.basis() + "."));
        }
        if (effort.electric(round)) {
            current(sheet, text);
        }
        text.addAll(TextTable.hanging("Compare: ", sheet.comparability().sentence()));
        text.addAll(rows(sheet.comparability().rows()));
        text.addAll(detection(round));
        return text;
    }

    private static void current(EffortSheet sheet, List<String> text) {
        VisitEffort effort = sheet.effort();
        effort.shock()
                .ifPresent(shock -> text.addAll(TextTable.hanging(
                        "Button time: ",
                        "p50 " + shock.p50S() + " s, p80 " + shock.p80S() + " s, n " + shock.pastVisits() + ": "
                                + shock.basis() + ".")));
        if (!sheet.pace().isEmpty()) {
            text.addAll(TextTable.hanging(
                    "Pace: ",
                    "seconds in each sub-reach/from the start: "
                            + sheet.pace().stream()
                                    .map(step -> step.letter() + " " + step.expectedS() + "/" + step.totalS())
                                    .collect(Collectors.joining(", "))));
        }
        effort.batteries().ifPresent(need -> text.addAll(TextTable.hanging("Packs: ", need.explanation() + ".")));
        sheet.packHealth()
                .ifPresent(health -> text.addAll(TextTable.hanging("Packs of the store: ", health.words() + ".")));
        text.add("");
        text.addAll(TextTable.hanging(
                "Settings: ",
                effort.settings()
                        .map(StartSettings::explanation)
                        .orElse("none on record. Start at the lowest output and raise it only as far as fish need.")));
        text.addAll(rows(sheet.settingsRows()));
        text.add("");
    }

    private static List<String> rows(List<Compared> rows) {
        if (rows.isEmpty()) {
            return List.of();
        }
        TextTable table = new TextTable("what", "last time", "today", "", "difference");
        rows.forEach(row ->
                table.row(row.what(), row.last(), row.today(), row.likeness().word(), row.difference()));
        return table.lines();
    }

    static List<String> cautions(List<String> cautions) {
        return cautions.stream()
                .flatMap(caution -> TextTable.hanging("! ", caution).stream())
                .toList();
    }

    /** For the round's usual reach; nothing where the length goes by the width. */
    private static List<String> detection(Round round) {
        return round.header()
                .reach()
                .protocol()
                .fixedRule()
                .map(EffortText::detection)
                .orElse(List.of());
    }

    private static List<String> detection(ReachRule rule) {
        List<String> text = new ArrayList<>(TextTable.hanging(
                "Detection: ",
                String.format(
                        Locale.ROOT,
                        "%.0f m meets about %.0f %% of the species there (1 - exp(-kL), ours, through 90 %% at 150 m of"
                                + " David et al. 2010); 95 %% takes about %.0f m. To meet one species with 90 %% in %d"
                                + " sub-reaches, each must meet it with %.2f.",
                        rule.lengthM(),
                        100 * Accumulation.BY_METRE.shareAt(rule.lengthM()),
                        Accumulation.BY_METRE.lengthFor(0.95),
                        rule.subReachCount(),
                        Detection.perUnitNeeded(0.9, rule.subReachCount()))));
        text.addAll(cautions(List.of(Detection.CAUTION)));
        return text;
    }
}
