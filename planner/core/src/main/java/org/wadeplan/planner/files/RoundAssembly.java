package org.wadeplan.planner.files;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.hazards.register.HazardRegister;
import org.wadeplan.planner.files.CertificateTable.CertificateOf;
import org.wadeplan.planner.files.MethodPartTable.PartOf;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.InputHash;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Terrain;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.VoltageCeiling;

/** Joins what stands in several tables: parts to their methods, certificates to their items. */
record RoundAssembly(
        Path folder,
        RoundHeader header,
        RoundTables tables,
        DecisionTable decisions,
        Terrain terrain,
        HazardRegister register) {

    Round round(InputHash hash) {
        return new Round(
                folder,
                header,
                terrain,
                tables.waters().values(),
                tables.sites().values(),
                tables.pastVisits().values().stream()
                        .sorted(Comparator.comparing(PastVisit::date))
                        .toList(),
                tables.travel().values(),
                tables.methods().values().stream().map(this::withParts).toList(),
                decisions,
                store(),
                tables.people().values(),
                tables.crewDays().values(),
                tables.permits().values(),
                tables.consents().values(),
                biosecurity(),
                tables.tides().values(),
                tables.siteHazards().values(),
                tables.forecast().values(),
                tables.care().values(),
                register,
                hash,
                tables.depths().values(),
                log());
    }

    private Method withParts(Method method) {
        List<MethodPart> parts = tables.methodParts().values().stream()
                .filter(of -> of.method().equals(method.id()))
                .map(PartOf::part)
                .sorted(Comparator.comparingInt(MethodPart::order))
                .toList();
        return new Method(method.id(), method.label(), method.kind(), parts, method.source());
    }

    private Store store() {
        return new Store(
                tables.kitSets().values().stream().map(this::withItsItems).toList(),
                tables.store().values().stream().map(this::withCertificates).toList(),
                tables.kitNeeds().values(),
                tables.packSeconds().values().stream()
                        .sorted(Comparator.comparingDouble(PackSeconds::conductivityMaxUsCm))
                        .toList(),
                tables.voltageCeilings().values().stream()
                        .sorted(Comparator.comparingDouble(VoltageCeiling::conductivityMinUsCm))
                        .toList());
    }

    /** A set holds whatever one of its items holds, and has been wet since the last of them was. */
    private KitSet withItsItems(KitSet set) {
        Set<String> exposedTo = new LinkedHashSet<>(set.exposedTo());
        Optional<Instant> wetSince = set.wetSince();
        boolean undated = !set.exposedTo().isEmpty() && wetSince.isEmpty();
        for (StoreItem item : tables.store().values()) {
            if (item.kitSet().filter(set.id()::equals).isPresent()) {
                exposedTo.addAll(item.detail().exposedTo());
                undated |= !item.detail().exposedTo().isEmpty()
                        && item.detail().wetSince().isEmpty();
                wetSince = Stream.concat(wetSince.stream(), item.detail().wetSince().stream())
                        .max(Comparator.naturalOrder());
            }
        }
        return new KitSet(
                set.id(),
                set.purpose(),
                set.materials(),
                set.state(),
                List.copyOf(exposedTo),
                undated ? Optional.empty() : wetSince,
                set.note());
    }

    private StoreItem withCertificates(StoreItem item) {
        return item.with(tables.certificates().values().stream()
                .filter(of -> of.item().equals(item.id()))
                .map(CertificateOf::certificate)
                .toList());
    }

    private Biosecurity biosecurity() {
        return new Biosecurity(
                tables.pests().values(),
                tables.waterPests().values(),
                evidence(),
                tables.deconSteps().values(),
                tables.deconResources().values(),
                tables.gearClasses().values(),
                tables.deconRules().values(),
                header.jurisdiction());
    }

    /** Rows about the round's own pests, and what an agency's instruction adds to them. */
    private List<Treatment> evidence() {
        Set<String> pests = tables.pests().values().stream().map(Pest::id).collect(Collectors.toSet());
        List<Treatment> rows = tables.treatments().values().stream()
                .filter(row -> pests.contains(row.pest()))
                .toList();
        return AgencyRows.with(
                rows, tables.treatments().values(), tables.deconRules().values(), pests);
    }

    private FieldLog log() {
        return new FieldLog(
                tables.agreedWeek().values(),
                tables.baths().values(),
                tables.cleanings().values(),
                tables.loadTicks().values());
    }
}
