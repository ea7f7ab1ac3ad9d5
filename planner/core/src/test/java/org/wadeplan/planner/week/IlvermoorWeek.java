package org.wadeplan.planner.week;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;

/**
 * The demo round with the steps before the week written by hand from the invented scenario: methods and minutes on site
 * from its table of sites. What a kit set gets between two waters is the real table, because the check of a week holds every
 * cleaning against the evidence.
 */
public final class IlvermoorWeek {

    private static final Map<String, Round> READ = new TreeMap<>();

    /** Site, method, then part=p50/p80. */
    private static final String SITES = """
            BRN-01 EFISH survey=265/300
            BRN-02 EFISH survey=300/345
            BRN-03 TRAP set=60/75 lift=90/115
            HSK-01 EFISH survey=250/285
            HSK-02 SPOT mark=30/30 night=65/80
            TOL-01 EFISH survey=270/310
            TOL-02 RECORD_DRY dry-check=30/40
            TOL-03 EFISH_AM survey=285/325
            OUN-01 EFISH survey=280/320
            OUN-02 EFISH survey=310/355
            OUN-02B EFISH survey=300/370
            OUN-03 EFISH survey=330/385
            PEL-01 TRAP set=55/65 lift=100/125
            PEL-02 SPOT mark=30/30 night=50/60
            """;

    private IlvermoorWeek() {}

    public static synchronized Round resolved() {
        return READ.computeIfAbsent("ilvermoor", IlvermoorWeek::read);
    }

    public static synchronized Round troubled() {
        return READ.computeIfAbsent("ilvermoor-troubled", IlvermoorWeek::read);
    }

    public static WeekInputs inputs(Round round) {
        List<MethodDecision> decisions = new ArrayList<>();
        List<VisitEffort> efforts = new ArrayList<>();
        List<VisitKit> kits = new ArrayList<>();
        for (String line : SITES.lines().toList()) {
            List<String> words = List.of(line.split(" ", -1));
            String site = words.get(0);
            String method = words.get(1);
            decisions.add(decision(site, method));
            efforts.add(new VisitEffort(
                    site,
                    method,
                    words.stream().skip(2).map(IlvermoorWeek::effort).toList(),
                    Optional.empty(),
                    method.startsWith("EFISH")
                            ? Optional.of(new BatteryNeed(2500, 2000, 1.25, 2, "by hand"))
                            : Optional.empty(),
                    Optional.empty()));
            kits.addAll(kits(round, site, method));
        }
        return new WeekInputs(round, decisions, efforts, kits, TurnaroundPlanner.table(round));
    }

    public static MethodDecision decision(String site, String method) {
        return new MethodDecision(
                site, new MethodOutcome.Chosen(1, "by hand", method, OptionalInt.empty(), List.of()), "by hand", "");
    }

    private static PartEffort effort(String word) {
        String[] parts = word.split("[=/]", -1);
        VisitPart part = List.of(VisitPart.values()).stream()
                .filter(one -> one.word().equals(parts[0]))
                .findFirst()
                .orElseThrow();
        return new PartEffort(part, Integer.parseInt(parts[1]), Integer.parseInt(parts[2]), 0, "scenario");
    }

    private static List<VisitKit> kits(Round round, String site, String method) {
        Method known = round.method(method).orElseThrow();
        return known.parts().stream()
                .map(part -> new VisitKit(site, part.part(), purposes(known, part), needs(round, method, part), 0))
                .toList();
    }

    private static List<org.wadeplan.planner.round.KitNeed> needs(Round round, String method, MethodPart part) {
        return round.store().needs().stream()
                .filter(need -> need.method().equals(method) && need.part() == part.part())
                .toList();
    }

    private static List<KitPurpose> purposes(Method method, MethodPart part) {
        if (method.kind() == MethodKind.NETTING) {
            return List.of(KitPurpose.WADERS_ONLY, KitPurpose.TRAPS);
        }
        return List.of(part.part() == VisitPart.DRY_CHECK ? KitPurpose.WADERS_ONLY : KitPurpose.WADING);
    }

    public static Site site(Round round, String id) {
        return round.site(id).orElseThrow();
    }

    private static Round read(String name) {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path folder = at.resolve("demo-sites").resolve(name);
            if (Files.isDirectory(folder)) {
                var checked = RoundReader.read(folder);
                return checked.value()
                        .orElseThrow(() -> new IllegalStateException(checked.problems().stream()
                                .map(one -> one.sentence())
                                .toList()
                                .toString()));
            }
        }
        throw new IllegalStateException("No folder demo-sites/" + name + " here or above");
    }
}
