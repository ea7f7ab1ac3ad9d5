package org.wadeplan.planner.files;

import static org.wadeplan.planner.files.NumberCell.quoted;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.CertificateTable.CertificateOf;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.ItemCertificate;

/** Finds rows that say twice what can only be said once, and shows in what they differ. */
final class Duplicates {

    private static final int MOST_SHOWN = 3;

    private final List<Problem> problems = new ArrayList<>();

    private Duplicates() {}

    static List<Problem> check(RoundTables tables) {
        Duplicates found = new Duplicates();
        found.sites(tables);
        found.gear(tables);
        found.rules(tables);
        found.check(tables.people(), PersonTable.KIND, "person");
        found.check(tables.crewDays(), CrewDayTable.KIND, "date", "crew");
        found.check(tables.permits(), PermitTable.KIND, "permit");
        found.check(tables.consents(), ConsentTable.KIND, "consent");
        found.certificates(tables.certificates());
        return found.problems;
    }

    private void sites(RoundTables tables) {
        check(tables.waters(), WaterTable.KIND, "water");
        check(tables.sites(), SiteTable.KIND, "site");
        check(tables.sites(), SiteTable.KIND, "short_code");
        check(tables.pastVisits(), PastVisitTable.KIND, "site", "date", "method", "part");
        check(tables.travel(), TravelTable.KIND, "from", "to");
        check(tables.barriers(), BarrierTable.KIND, "barrier");
        check(tables.care(), CareTable.KIND, "care");
        check(tables.forecast(), ForecastTable.KIND, "date");
        check(tables.tides(), TideTable.KIND, "place", "low_water");
        check(tables.depths(), DepthTable.KIND, "site", "from_start_m");
    }

    private void gear(RoundTables tables) {
        check(tables.kitSets(), KitSetTable.KIND, "kit_set");
        check(tables.store(), StoreTable.KIND, "item");
        check(tables.kitNeeds(), KitNeedTable.KIND, "method", "part", "kind", "per");
        check(tables.packSeconds(), PackSecondsTable.KIND, "conductivity_max_us_cm");
        check(tables.voltageCeilings(), VoltageCeilingTable.KIND, "conductivity_min_us_cm");
        check(tables.deconResources(), DeconResourceTable.KIND, "resource");
        check(tables.gearClasses(), GearClassTable.KIND, "gear_class");
        check(tables.baths(), BathTable.KIND, "bath");
        check(tables.cleanings(), CleaningTable.KIND, "cleaning");
        check(tables.loadTicks(), LoadTickTable.KIND, "date", "crew", "item");
    }

    private void rules(RoundTables tables) {
        check(tables.methods(), MethodTable.KIND, "method");
        check(tables.methodParts(), MethodPartTable.KIND, "method", "part");
        check(tables.methodParts(), MethodPartTable.KIND, "method", "order");
        check(tables.pests(), PestTable.KIND, "pest");
        check(tables.waterPests(), WaterPestTable.KIND, "water", "pest");
        treatments(tables.treatments().only(TreatmentTable::refuses));
        treatments(tables.treatments().only(row -> !TreatmentTable.refuses(row)));
        check(tables.deconRules(), DeconRuleTable.KIND, "rule");
    }

    /** A row that refuses and one that supports contradict each other; that is said elsewhere. */
    private void treatments(Table<?> table) {
        check(
                table,
                TreatmentTable.KIND,
                "treatment",
                "pest",
                "stage",
                "material",
                "mode",
                "valid_from",
                "jurisdiction");
    }

    /** Codes that differ only in upper and lower case count as the same: people and handhelds take them so. */
    private void check(Table<?> table, TableKind<?> kind, String... keyColumns) {
        Map<String, Row> firsts = new LinkedHashMap<>();
        for (Row row : table.raw()) {
            List<String> cells = List.of(keyColumns).stream().map(row::raw).toList();
            if (Stream.of(keyColumns).filter(kind.required()::contains).noneMatch(column -> row.raw(column)
                    .isEmpty())) {
                Row first = firsts.putIfAbsent(String.join("\n", cells).toLowerCase(Locale.ROOT), row);
                if (first != null) {
                    problems.add(twice(kind, String.join(", ", keyColumns), String.join(" ", cells), first, row));
                }
            }
        }
    }

    private static Problem twice(TableKind<?> kind, String columns, String key, Row first, Row again) {
        String differing = kind.columns().stream()
                .filter(column -> !first.raw(column).equals(again.raw(column)))
                .limit(MOST_SHOWN)
                .map(column ->
                        column + " " + shown(first.raw(column)) + " there and " + shown(again.raw(column)) + " here")
                .collect(Collectors.joining("; "));
        int line = first.place().line().orElseThrow();
        return Problem.error(
                "duplicate",
                again.place().column(columns),
                quoted(key) + " stands on line " + line + " already: "
                        + (differing.isEmpty() ? "the rows are the same" : differing),
                "each once",
                differing.isEmpty()
                        ? "delete one of the rows"
                        : "find out which row is right and delete or rename the other");
    }

    private static String shown(String cell) {
        return cell.isEmpty() ? "blank" : cell;
    }

    /** A renewal is no duplicate, as long as the certificates' times do not overlap. */
    private void certificates(Table<CertificateOf> table) {
        Map<String, Placed<CertificateOf>> lasts = new LinkedHashMap<>();
        for (Placed<CertificateOf> row : table.rows()) {
            CertificateOf of = row.value();
            Placed<CertificateOf> before =
                    lasts.put(of.item() + "\n" + of.certificate().certificate(), row);
            if (before != null && overlap(before.value().certificate(), of.certificate())) {
                problems.add(twoDates(before, row));
            }
        }
    }

    private static boolean overlap(ItemCertificate a, ItemCertificate b) {
        return startsBy(a.validFrom(), b.validUntil()) && startsBy(b.validFrom(), a.validUntil());
    }

    private static boolean startsBy(Optional<LocalDate> from, LocalDate until) {
        return from.map(day -> !day.isAfter(until)).orElse(true);
    }

    private static Problem twoDates(Placed<CertificateOf> before, Placed<CertificateOf> again) {
        CertificateOf of = again.value();
        return Problem.error(
                "certificate-twice",
                again.place(),
                of.item() + " has two certificates \"" + of.certificate().certificate() + "\" for the same time: until "
                        + before.value().certificate().validUntil() + " (line "
                        + before.place().line().orElseThrow() + ") and until "
                        + of.certificate().validUntil() + " here",
                "one at a time, with valid_from where one follows another",
                "find out which is right and delete the other");
    }
}
