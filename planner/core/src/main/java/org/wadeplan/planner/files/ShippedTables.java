package org.wadeplan.planner.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Treatment;

/**
 * The tables that come with the program and stand in where a round folder has none of its own: evidence about real pests,
 * what kinds of gear bear, rules of places. Each row names its source.
 */
public final class ShippedTables {

    private static final String FOLDER = "/org/wadeplan/planner/decon/";
    private static final Map<String, String> FILES =
            Map.of("treatments", "evidence.csv", "gear_classes", "gear_classes.csv", "decon_rules", "decon_rules.csv");

    /** A pest of the shipped evidence, with its life stages where the evidence tells them apart. */
    public record ShippedPest(String id, String name, String group, List<String> stages) {}

    private static final TableKind<ShippedPest> PESTS = TableKind.named("pests_shipped", "pest")
            .required("pest name group")
            .optional("stages")
            .makes(row ->
                    new ShippedPest(row.text("pest"), row.text("name"), row.text("group"), row.optionalList("stages")));

    private static final List<ShippedPest> PEST_NAMES =
            table(PESTS, "pests_shipped.csv").values();

    private ShippedTables() {}

    /** The evidence, in the form of {@code treatments.csv}. */
    public static List<Treatment> evidence() {
        return table(TreatmentTable.KIND).values();
    }

    /** What kinds of gear bear, in the form of {@code gear_classes.csv}. */
    public static List<GearClass> gearClasses() {
        return table(GearClassTable.KIND).values();
    }

    /** Rules of places, in the form of {@code decon_rules.csv}. */
    public static List<DeconRule> rules() {
        return table(DeconRuleTable.KIND).values();
    }

    /** The pests of the evidence. */
    public static List<ShippedPest> pests() {
        return PEST_NAMES;
    }

    static Set<String> pestIds() {
        Set<String> ids = new TreeSet<>();
        PEST_NAMES.forEach(pest -> ids.add(pest.id()));
        return Collections.unmodifiableSet(ids);
    }

    static <T> Table<T> table(TableKind<T> kind) {
        return table(kind, Objects.requireNonNull(FILES.get(kind.stem()), kind.stem()));
    }

    private static <T> Table<T> table(TableKind<T> kind, String name) {
        String file = "shipped " + name;
        try (InputStream in = Objects.requireNonNull(ShippedTables.class.getResourceAsStream(FOLDER + name), name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Table.of(CsvTable.of(text, file, kind), file, kind, true);
        } catch (IOException fault) {
            throw new UncheckedIOException("The shipped table " + name + " cannot be read", fault);
        }
    }
}
