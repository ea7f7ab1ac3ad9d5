package org.wadeplan.planner.method.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.method.audit.AuditReport;
import org.wadeplan.planner.method.audit.TableAudit;
import org.wadeplan.planner.method.engine.PeerEngine;
import org.wadeplan.planner.method.space.TableIndex;

/**
 * The method table against its goals: audit of 16 rules under 50 ms, of 1,000 rules over 8 inputs under 2 s, of 10,000
 * rules at all, and a million decisions a second on one core, with a general-purpose DMN engine as the peer. Ends with 1
 * where a goal is missed. Made tables are seeded, so that every run looks at the same ones.
 */
public final class MethodBench {

    private static final int CASES = 20_000;
    private static final double NS_PER_MS = 1e6;
    private static final double BYTES_PER_MB = 1e6;
    private static final String ROW = "%-44s %-12s %14s %14s %8s  %s%n";

    private boolean fallsShort;

    private MethodBench() {}

    /**
     * Prints the table of figures.
     *
     * @param args the DMN file of a small table, the corrected one of the demo round where none is given
     */
    public static void main(String[] args) {
        Logger peerLog = Logger.getLogger("org.camunda.bpm.dmn");
        peerLog.setLevel(Level.OFF);
        MethodBench bench = new MethodBench();
        String file = args.length > 0 ? args[0] : "../../demo-sites/ilvermoor/method.dmn";
        DecisionTable table =
                DecisionTableReader.read(Path.of(file), "method.dmn").value().orElseThrow();
        print(ROW, "figure", "goal", "ours", "peer", "ratio", "holds");
        bench.audit("audit, 16 rules x 7 inputs", table, 30, 50);
        DecisionTable thousand = BigTable.faultless(1_000, 8, 7);
        bench.audit("audit, 1,000 rules x 8 inputs, faultless", thousand, 5, 2_000);
        bench.audit("audit, the same with 40 faults", BigTable.harmed(thousand, 40, 9), 5, 2_000);
        bench.large();
        bench.decisions(table);
        System.exit(bench.fallsShort ? 1 : 0);
    }

    /** The median of some runs after as many to warm up. */
    private void audit(String name, DecisionTable table, int runs, double goalMs) {
        List<Double> times = new ArrayList<>();
        for (int run = 0; run < 2 * runs; run++) {
            long from = System.nanoTime();
            AuditReport report = TableAudit.audit(table);
            times.add((System.nanoTime() - from) / NS_PER_MS);
            if (!report.complete()) {
                throw new IllegalStateException("The audit was given up: " + name);
            }
        }
        double median = times.subList(runs, 2 * runs).stream().sorted().toList().get(runs / 2);
        row(name, "< " + (int) goalMs + " ms", ms(median), "none", "", median < goalMs);
    }

    private void large() {
        DecisionTable table = BigTable.harmed(BigTable.faultless(10_000, 8, 7), 40, 9);
        long from = System.nanoTime();
        AuditReport report = TableAudit.audit(table);
        double elapsedMs = (System.nanoTime() - from) / NS_PER_MS;
        String heapMb = String.format(Locale.ROOT, "%.0f", Runtime.getRuntime().maxMemory() / BYTES_PER_MB);
        row(
                "audit, 10,000 rules x 8 inputs, 40 faults",
                "in " + heapMb + " MB",
                ms(elapsedMs),
                "none",
                "",
                report.complete());
    }

    private void decisions(DecisionTable table) {
        List<Map<String, CaseValue>> cases = cases();
        double ours = ours(TableIndex.of(table), cases);
        double peer = peer(PeerEngine.of(table), cases.subList(0, CASES / 10));
        String ratio = String.format(Locale.ROOT, "%.0f", peer / ours);
        row(
                "decisions a second, 16 rules, one core",
                "> 1,000,000",
                perSecond(ours),
                perSecond(peer),
                ratio,
                ours < 1_000);
    }

    /** The fastest of some rounds, nanoseconds a decision. */
    private static double ours(TableIndex index, List<Map<String, CaseValue>> cases) {
        double fastest = Double.POSITIVE_INFINITY;
        long matched = 0;
        for (int round = 0; round < 60; round++) {
            long from = System.nanoTime();
            for (Map<String, CaseValue> one : cases) {
                matched += index.answer(one).rules().size();
            }
            fastest = Math.min(fastest, (System.nanoTime() - from) / (double) cases.size());
        }
        if (matched == 0) {
            throw new IllegalStateException("No case matched a rule");
        }
        return fastest;
    }

    private static double peer(PeerEngine engine, List<Map<String, CaseValue>> cases) {
        List<Map<String, Object>> variables =
                cases.stream().map(PeerEngine::variables).toList();
        double fastest = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 4; round++) {
            long from = System.nanoTime();
            for (Map<String, Object> one : variables) {
                Objects.requireNonNull(engine.evaluated(one));
            }
            fastest = Math.min(fastest, (System.nanoTime() - from) / (double) variables.size());
        }
        return fastest;
    }

    private static List<Map<String, CaseValue>> cases() {
        Random random = new Random(20270906);
        List<String> states = List.of("dry", "pools", "flowing", "flowing");
        List<Map<String, CaseValue>> cases = new ArrayList<>();
        for (int i = 0; i < CASES; i++) {
            cases.add(Map.of(
                    "wet_state", CaseValue.of(states.get(random.nextInt(states.size()))),
                    "depth_velocity_m2s", CaseValue.of(random.nextInt(120) / 100.0),
                    "max_depth_m", CaseValue.of(random.nextInt(250) / 100.0),
                    "conductivity_us_cm", CaseValue.of(random.nextInt(900)),
                    "clarity_m", CaseValue.of(random.nextInt(30) / 10.0),
                    "water_temp_c", CaseValue.of(random.nextInt(300) / 10.0),
                    "night_access", CaseValue.of(random.nextBoolean())));
        }
        return cases;
    }

    private void row(String figure, String goal, String ours, String peer, String ratio, boolean holds) {
        fallsShort |= !holds;
        print(ROW, figure, goal, ours, peer, ratio, holds ? "yes" : "NO");
    }

    private static void print(String form, Object... parts) {
        System.out.print(String.format(Locale.ROOT, form, parts));
    }

    private static String ms(double value) {
        return String.format(Locale.ROOT, "%.1f ms", value);
    }

    private static String perSecond(double ns) {
        return String.format(Locale.ROOT, "%,.0f", 1e9 / ns);
    }
}
