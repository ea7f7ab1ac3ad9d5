package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An audit in words: a headline for each finding, then labelled lines. */
public final class AuditWords {

    private AuditWords() {}

    /**
     * One line of a finding.
     *
     * @param label blank on the headline
     */
    public record Line(String label, String text) {}

    /** What was looked at. */
    public static List<String> opening(AuditReport report) {
        List<String> lines = new ArrayList<>();
        lines.add("Method table " + report.file() + " (" + report.table() + "): " + report.ruleCount()
                + (report.ruleCount() == 1 ? " rule" : " rules") + ", hit policy " + report.hitPolicy());
        lines.add("Version by its SHA-256: "
                + report.hash().substring(0, Math.min(12, report.hash().length())));
        domains(report, true)
                .ifPresent(words -> lines.add("Every case was looked at, by the table's own ranges: " + words));
        domains(report, false)
                .ifPresent(words -> lines.add("The table gives no range for these, so it was assumed: " + words));
        return List.copyOf(lines);
    }

    private static Optional<String> domains(AuditReport report, boolean declared) {
        String words = report.domains().stream()
                .filter(domain -> domain.declared() == declared)
                .map(domain -> domain.input() + " " + domain.words())
                .collect(Collectors.joining("; "));
        return Optional.of(words).filter(text -> !text.isEmpty());
    }

    /** How many findings of which kind. */
    public static String count(AuditReport report) {
        if (report.findings().isEmpty()) {
            return "Every case has one answer: no gap, no contradiction, no overlap, no needless rule."
                    + " Whether the answers are right, only you can know.";
        }
        Map<FindingKind, Long> kinds = new LinkedHashMap<>();
        report.findings().forEach(finding -> kinds.merge(finding.kind(), 1L, Long::sum));
        String counts = kinds.entrySet().stream()
                .map(kind -> kind.getKey().words() + ": " + kind.getValue())
                .collect(Collectors.joining("; "));
        return report.findings().size() + (report.findings().size() == 1 ? " finding" : " findings")
                + ", worst first. " + counts + "."
                + (report.complete() ? "" : " There is more than is listed here: mend these and audit again.");
    }

    /** The lines of one finding. */
    public static List<Line> lines(AuditFinding finding) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("", finding.headline()));
        if (!finding.region().isEmpty()) {
            lines.add(new Line(
                    "where", finding.region().stream().map(RegionPart::words).collect(Collectors.joining("; "))));
        }
        if (!finding.example().isEmpty()) {
            lines.add(new Line("example", example(finding) + ": " + finding.exampleAnswer()));
        }
        sites(finding, SiteHit.How.HIT, "sites", lines);
        sites(finding, SiteHit.How.POSSIBLE, "may hit", lines);
        sites(finding, SiteHit.How.NEAR, "near", lines);
        finding.byPolicy().forEach(words -> lines.add(new Line("policy", words)));
        finding.mends().forEach(words -> lines.add(new Line("mend", words)));
        return IntStream.range(0, lines.size())
                .mapToObj(i ->
                        i > 0 && lines.get(i).label().equals(lines.get(i - 1).label())
                                ? new Line(" ", lines.get(i).text())
                                : lines.get(i))
                .toList();
    }

    /** {@code max_depth_m=0.75 night_access=true}, to be typed after {@code wadeplan method try}. */
    public static String example(AuditFinding finding) {
        return finding.example().entrySet().stream()
                .map(entry -> entry.getKey() + "=" + entry.getValue().replace("\"", ""))
                .collect(Collectors.joining(" "));
    }

    private static String outcome(FindingKind kind) {
        return switch (kind) {
            case GAP, GAP_AT_LIMIT -> ": no method";
            case CONTRADICTION, CONTRADICTION_AT_LIMIT -> ": more than one answer";
            default -> "";
        };
    }

    private static void sites(AuditFinding finding, SiteHit.How how, String label, List<Line> lines) {
        List<String> sites = finding.sites().stream()
                .filter(site -> site.how() == how)
                .map(site -> site.site() + " (" + site.words() + ")")
                .toList();
        if (!sites.isEmpty()) {
            String outcome = how == SiteHit.How.HIT ? outcome(finding.kind()) : "";
            lines.add(new Line(label, String.join("; ", sites) + outcome));
        }
    }
}
