package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.space.Box;

/** Rules that never answer, or that could go. */
final class RowFinder {

    private final AuditedTable audited;
    private final SiteFinder sites;
    private final Rows rows;

    RowFinder(AuditedTable audited, List<SiteCase> cases, Rows rows) {
        this.audited = audited;
        this.sites = new SiteFinder(audited, cases);
        this.rows = rows;
    }

    List<AuditFinding> findings() {
        List<AuditFinding> findings = new ArrayList<>();
        rows.neverMatching().forEach(index -> findings.add(neverMatching(index)));
        rows.neverFirst().forEach(index -> findings.add(neverFirst(index)));
        rows.redundant().forEach(index -> findings.add(redundant(index)));
        return findings;
    }

    private AuditFinding neverMatching(int index) {
        Box box = audited.boxes().get(index);
        int column = IntStream.range(0, audited.width())
                .filter(at -> box.isVoidIn(at))
                .findFirst()
                .orElseThrow();
        String name = audited.input(column).name();
        int number = audited.rule(index).number();
        return new AuditFinding(
                FindingKind.UNREACHABLE,
                Severity.WARNING,
                "Rule " + number + " can never match: its cell " + audited.cellText(index, column) + " for " + name
                        + " holds no possible value",
                List.of(number),
                List.of(),
                List.of(),
                Map.of(),
                "",
                List.of(),
                List.of("no hit policy makes it answer"),
                List.of("correct the cell, or the allowed values of " + name + " ("
                        + audited.space().columns().get(column).domain().words() + "), or delete the rule"));
    }

    private AuditFinding neverFirst(int index) {
        String before = RuleList.words(audited.numbers(rows.instead(index)));
        return about(
                index,
                FindingKind.UNREACHABLE,
                Severity.WARNING,
                "Rule " + audited.rule(index).number() + " (" + audited.result(audited.rule(index))
                        + ") never answers: wherever it matches, " + before + " "
                        + (rows.instead(index).size() == 1 ? "goes" : "go") + " before it",
                "move it further up if it is meant as an exception, or delete it");
    }

    private AuditFinding redundant(int index) {
        int number = audited.rule(index).number();
        List<Integer> instead = rows.instead(index);
        String others = RuleList.words(audited.numbers(instead));
        String result = audited.result(audited.rule(index));
        boolean whole = instead.size() == 1
                && audited.boxes().get(instead.get(0)).covers(audited.boxes().get(index));
        String headline = whole
                ? "Rule " + number + " lies inside " + others + " and says the same, " + result
                : "Rule " + number + " adds nothing: " + others + " together give " + result + " wherever it matches";
        HitPolicy policy = audited.table().hitPolicy();
        List<SiteHit> hits = sites.of(List.of(audited.boxes().get(index)), List.of());
        boolean hit = hits.stream().anyMatch(site -> site.how() == SiteHit.How.HIT);
        Severity severity = policy != HitPolicy.UNIQUE ? Severity.NOTE : hit ? Severity.ERROR : Severity.WARNING;
        return about(index, FindingKind.REDUNDANT, severity, headline, "delete rule " + number + ": no case changes");
    }

    private AuditFinding about(int index, FindingKind kind, Severity severity, String headline, String mend) {
        Box box = audited.boxes().get(index);
        Map<String, CaseValue> example = audited.space().sample(box);
        PolicyWords policies = new PolicyWords(audited);
        return new AuditFinding(
                kind,
                severity,
                headline,
                List.of(audited.rule(index).number()),
                audited.numbers(rows.instead(index)),
                audited.region(box),
                AuditedTable.cells(example),
                policies.answer(audited.matching(example)),
                sites.of(List.of(box), List.of()).stream()
                        .filter(site -> site.how() == SiteHit.How.HIT)
                        .toList(),
                policies.byPolicy(audited.matching(example)),
                List.of(mend));
    }
}
