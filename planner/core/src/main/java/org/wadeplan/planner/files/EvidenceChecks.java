package org.wadeplan.planner.files;

import static org.wadeplan.planner.files.NumberCell.quoted;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** What a round's own evidence leaves open or says twice: none of it hides a row, all of it is worth a look. */
final class EvidenceChecks {

    private final RoundTables tables;
    private final List<Placed<Treatment>> rows;
    private final List<Problem> problems = new ArrayList<>();

    private EvidenceChecks(RoundTables tables) {
        this.tables = tables;
        this.rows = tables.treatments().rows();
    }

    static List<Problem> check(RoundTables tables, Optional<RoundHeader> header) {
        EvidenceChecks checks = new EvidenceChecks(tables);
        header.flatMap(RoundHeader::jurisdiction).ifPresent(checks::jurisdiction);
        boolean allNamed =
                tables.pests().names("pest").containsAll(tables.waterPests().names("pest"));
        if (allNamed && tables.waters().whole() && tables.waterPests().whole()) {
            tables.waters().values().forEach(water -> checks.looksMissing(water.id()));
        }
        if (!tables.treatments().shipped()) {
            checks.contradictions();
            checks.sprayOnly();
            checks.hotterThanGearBears();
        }
        return checks.problems;
    }

    /** Into an ordinary water a pest that no row mentions is not cleaned against, so that its row must not get lost unseen. */
    private void looksMissing(String water) {
        List<String> missing = tables.pests().values().stream()
                .map(Pest::id)
                .filter(pest -> tables.waterPests().values().stream()
                        .noneMatch(
                                row -> row.water().equals(water) && row.pest().equals(pest)))
                .toList();
        if (!missing.isEmpty()) {
            problems.add(Problem.warning(
                    "pest-status-missing",
                    SourcePlace.part(tables.waterPests().file(), water),
                    "no row says anything of " + String.join(", ", missing) + " in " + water
                            + ", so that kit from there is cleaned against it only on the way into a protected water",
                    "a row for every pest of the list in every water",
                    "add the row: known, suspected or free with its date, or unknown, which counts as suspected"));
        }
    }

    /** A place that no row and no rule names is probably misspelt, and then none of its rules would count. */
    private void jurisdiction(String place) {
        Set<String> places = new TreeSet<>();
        rows.forEach(row -> row.value().validity().jurisdiction().ifPresent(places::add));
        tables.deconRules()
                .values()
                .forEach(rule -> rule.validity().jurisdiction().ifPresent(places::add));
        if (!places.contains(place)) {
            Optional<String> nearest = NearestWord.of(place, places);
            problems.add(Problem.warning(
                    "jurisdiction-unused",
                    SourcePlace.part(RoundJson.FILE, "jurisdiction"),
                    "no rule and no row of evidence names " + quoted(place)
                            + nearest.map(known -> "; nearest is " + known).orElse(""),
                    places.isEmpty() ? "rules of the place in decon_rules.csv" : String.join(", ", places),
                    nearest.map(known -> "write " + known + " if that is meant")
                            .orElse("add the rules of the place; until then none of them counts")));
        }
    }

    private void contradictions() {
        for (Placed<Treatment> row : rows) {
            for (Placed<Treatment> refusal : rows) {
                if (row.value().grade() != EvidenceGrade.X && refuses(refusal.value(), row.value())) {
                    Treatment of = row.value();
                    problems.add(Problem.warning(
                            "evidence-contradiction",
                            row.place(),
                            of.id() + " (" + lower(of.mode()) + ") against " + of.pest() + " on " + lower(of.material())
                                    + " items is supported here and refused by the row of grade X on line "
                                    + refusal.place().line().orElseThrow(),
                            "one answer for one treatment, pest, material and mode",
                            "read both sources again; until then the refusal counts"));
                }
            }
        }
    }

    private static boolean refuses(Treatment refusal, Treatment row) {
        return refusal.grade() == EvidenceGrade.X
                && refusal.id().equals(row.id())
                && refusal.pest().equals(row.pest())
                && refusal.material() == row.material()
                && refusal.mode() == row.mode()
                && (refusal.stage().isEmpty() || refusal.stage().equals(row.stage()));
    }

    private void sprayOnly() {
        Set<Material> materials = new TreeSet<>();
        tables.kitSets().values().forEach(set -> materials.addAll(set.materials()));
        Map<String, List<Placed<Treatment>>> byPair = new TreeMap<>();
        for (Placed<Treatment> row : rows) {
            Treatment of = row.value();
            if (of.grade() != EvidenceGrade.X && materials.contains(of.material())) {
                byPair.computeIfAbsent(of.pest() + " on " + lower(of.material()) + " items", key -> new ArrayList<>())
                        .add(row);
            }
        }
        byPair.forEach((pair, supporting) -> {
            if (supporting.stream().allMatch(row -> row.value().mode() == TreatmentMode.SPRAY)) {
                Set<String> names = new LinkedHashSet<>();
                supporting.forEach(row -> names.add(row.value().id()));
                problems.add(Problem.warning(
                        "spray-only",
                        supporting.get(0).place(),
                        pair + " has only a spray row: " + String.join(", ", names),
                        "a soak: a spray is weaker in several trials, and a known pest asks for a soak",
                        "add a row of a soak with its source; until then a leg from a water that has it is refused"));
            }
        });
    }

    /** Says nothing where one item's limit is not known: it might bear it. */
    private void hotterThanGearBears() {
        List<StoreItem> inSets = tables.store().values().stream()
                .filter(item -> item.kitSet().isPresent())
                .toList();
        List<GearClass> known = new ArrayList<>();
        for (StoreItem item : inSets) {
            tables.gearClasses().values().stream()
                    .filter(gear ->
                            item.detail().gearClass().filter(gear.id()::equals).isPresent())
                    .filter(gear -> gear.maxTempC().isPresent())
                    .forEach(known::add);
        }
        if (known.isEmpty() || known.size() < inSets.size()) {
            return;
        }
        double mostC = known.stream()
                .mapToDouble(gear -> gear.maxTempC().orElseThrow())
                .max()
                .orElseThrow();
        Set<String> said = new TreeSet<>();
        for (Placed<Treatment> row : rows) {
            double tempC = row.value().tempC().orElse(Double.NEGATIVE_INFINITY);
            if (tempC > mostC && said.add(row.value().id())) {
                problems.add(Problem.warning(
                        "hotter-than-gear-bears",
                        row.place().column("temp_c"),
                        plain(tempC) + " °C is above what any item of a kit set bears",
                        "at most " + plain(mostC) + " °C by gear_classes.csv",
                        "check the temperature; " + quoted(row.value().id()) + " is used on nothing as it stands"));
            }
        }
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
