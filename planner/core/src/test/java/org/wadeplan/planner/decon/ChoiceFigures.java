package org.wadeplan.planner.decon;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.decon.bench.DeconFigure;
import org.wadeplan.planner.decon.bench.DeconFigures;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** How long the choice takes, on its own and against every combination of rows. */
public final class ChoiceFigures implements DeconFigures {

    private static final double NS_PER_MS = 1e6;
    private static final int CASES = 40;
    private static final double GOAL_MS = 50;
    private static final List<Material> MATERIALS = List.of(Material.HARD, Material.ABSORBENT, Material.FELT);
    private static final List<EvidenceGrade> GRADES =
            List.of(EvidenceGrade.A, EvidenceGrade.B, EvidenceGrade.C, EvidenceGrade.X);

    /** One made case. */
    private record Case(Biosecurity biosecurity, List<ItemKind> kinds, Set<String> pests) {}

    @Override
    public List<DeconFigure> measured() {
        List<Double> times = new ArrayList<>();
        for (double dense : new double[] {0.25, 0.5, 0.8}) {
            for (int round = 0; round < 2; round++) {
                for (int seed = 0; seed < CASES; seed++) {
                    Case made = made(12, 20, 15, dense, seed);
                    TreatmentChoice choice = new TreatmentChoice(made.biosecurity(), Rows.FIRST_DAY);
                    long from = cpuNs();
                    choice.choose(made.kinds(), made.pests(), Demand.NONE);
                    if (round == 1) {
                        times.add((cpuNs() - from) / NS_PER_MS);
                    }
                }
            }
        }
        times.sort(Double::compareTo);
        double median = times.get(times.size() / 2);
        double longest = times.get(times.size() - 1);
        return List.of(
                row("choose, 12 pests x 20 kinds x 15 treatments, median", median),
                row("the same, the longest of " + times.size() + " made cases", longest),
                againstBruteForce());
    }

    private static DeconFigure row(String figure, double ms) {
        return new DeconFigure(figure, "< 50 ms", ms(ms), "none", "", ms < GOAL_MS);
    }

    /** Both must give the same cost; otherwise the figure does not hold, however quick. */
    private static DeconFigure againstBruteForce() {
        double ours = 0;
        double peer = 0;
        boolean same = true;
        for (int seed = 0; seed < 2 * CASES; seed++) {
            Case made = made(3, 2, 4, 0.8, seed);
            CleanPrice price = new CleanPrice(made.biosecurity());
            long from = cpuNs();
            TreatmentChoice.Choice choice = choose(made);
            long between = cpuNs();
            Optional<CleanCost> cheapest = everyCombination(made, price);
            long until = cpuNs();
            if (seed >= CASES) {
                ours += (between - from) / NS_PER_MS / CASES;
                peer += (until - between) / NS_PER_MS / CASES;
            }
            same &= cheapest.filter(price.of(choice.steps(), choice.treatments())::equals)
                    .isPresent();
        }
        String ratio = String.format(Locale.ROOT, "%.0f", peer / ours);
        return new DeconFigure(
                "choose, 3 x 2 x 4, against every combination", "same cost", ms(ours), ms(peer), ratio, same);
    }

    private static TreatmentChoice.Choice choose(Case made) {
        return new TreatmentChoice(made.biosecurity(), Rows.FIRST_DAY).choose(made.kinds(), made.pests(), Demand.NONE);
    }

    private static Optional<CleanCost> everyCombination(Case made, CleanPrice price) {
        EvidenceTable evidence = new EvidenceTable(made.biosecurity(), Rows.FIRST_DAY);
        List<List<Evidence>> options = PestOnItem.all(made.pests(), made.kinds(), evidence).stream()
                .map(evidence::supporting)
                .filter(rows -> !rows.isEmpty())
                .toList();
        return new EveryCombination(options, new StepSequence(made.biosecurity()), price, set -> false).cheapest();
    }

    private static Case made(int pests, int kinds, int treatments, double dense, int seed) {
        Random random = new Random(seed);
        Set<String> names = new TreeSet<>();
        for (int pest = 0; pest < pests; pest++) {
            names.add("P" + (char) ('A' + pest));
        }
        List<Treatment> rows = new ArrayList<>();
        for (int treatment = 0; treatment < treatments; treatment++) {
            for (String pest : names) {
                for (Material material : MATERIALS) {
                    if (random.nextDouble() < dense) {
                        rows.add(row(treatment, pest, material, minutes(seed, random), random));
                    }
                }
            }
        }
        List<ItemKind> items = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            Material material = MATERIALS.get(random.nextInt(3));
            String agent = "agent " + random.nextInt(treatments);
            items.add(new ItemKind(
                    material,
                    Optional.of(Rows.gear("G" + kind, material, 40 + random.nextInt(40), Set.of(agent))),
                    List.of("kind" + kind)));
        }
        return new Case(Rows.biosecurity(rows), items, names);
    }

    /** Every other case has round minutes, so that many sets cost the same. */
    private static int minutes(int seed, Random random) {
        return seed % 2 == 0 ? 1 + random.nextInt(60) : 10 * (1 + random.nextInt(3));
    }

    private static Treatment row(int treatment, String pest, Material material, int minutes, Random random) {
        EvidenceGrade grade = GRADES.get(random.nextInt(20) == 0 ? 3 : random.nextInt(3));
        String id = "t" + treatment;
        return switch (treatment % 5) {
            case 0 -> Rows.hot(id, pest, material, 40 + treatment, minutes, grade);
            case 4 -> Rows.dry(pest, material, 24 * (1 + minutes / 10));
            default -> Rows.chemical(id, "agent " + treatment, pest, material, TreatmentMode.SOAK, minutes, grade);
        };
    }

    /** Time of this thread on a core, so that a busy machine measures the same as an idle one. */
    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static String ms(double value) {
        return String.format(Locale.ROOT, "%.2f ms", value);
    }
}
