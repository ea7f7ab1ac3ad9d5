package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.method.audit.AuditFinding;
import org.wadeplan.planner.method.audit.AuditReport;
import org.wadeplan.planner.method.audit.AuditWords;

/** An audit as lines of a terminal. */
final class AuditText {

    /** Enough for one sitting; {@code --json} gives all. */
    private static final int MOST_SHOWN = 40;

    private AuditText() {}

    static List<String> lines(AuditReport report) {
        List<String> text = new ArrayList<>();
        AuditWords.opening(report).forEach(line -> text.addAll(TextTable.hanging("", line)));
        text.addAll(TextTable.hanging("", AuditWords.count(report)));
        report.findings().stream()
                .limit(MOST_SHOWN)
                .forEach(finding -> text.addAll(finding(report.findings().indexOf(finding) + 1, finding)));
        if (report.findings().size() > MOST_SHOWN) {
            text.add("");
            text.add("and " + (report.findings().size() - MOST_SHOWN) + " more: --json lists them all");
        }
        if (report.findings().stream().anyMatch(finding -> !finding.example().isEmpty())) {
            text.add("");
            text.add("To try an example: wadeplan method try TABLE followed by the values as they stand above.");
        }
        return text;
    }

    private static List<String> finding(int number, AuditFinding finding) {
        List<String> text = new ArrayList<>();
        text.add("");
        String mark = number + ". " + word(finding) + ": ";
        for (AuditWords.Line line : AuditWords.lines(finding)) {
            text.addAll(TextTable.hanging(
                    line.label().isEmpty() ? mark : String.format(Locale.ROOT, "   %-8s ", line.label()), line.text()));
        }
        return text;
    }

    private static String word(AuditFinding finding) {
        String kind = finding.kind().words().toUpperCase(Locale.ROOT);
        return switch (finding.severity()) {
            case ERROR -> "ERROR, " + kind;
            case WARNING -> "WARNING, " + kind;
            case NOTE -> "note, " + kind;
        };
    }
}
