package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.space.Box;
import org.wadeplan.planner.method.space.Holes;
import org.wadeplan.planner.method.space.TableSpace;

/** Cases that no rule matches. */
final class GapFinder {

    private final AuditedTable audited;
    private final SiteFinder sites;
    private final Holes.Listed holes;

    GapFinder(AuditedTable audited, List<SiteCase> cases) {
        this.audited = audited;
        this.sites = new SiteFinder(audited, cases);
        TableSpace space = audited.space();
        List<Box> missed = cases.stream()
                .flatMap(site -> space.around(site.values()).stream())
                .filter(place -> audited.boxes().stream().noneMatch(box -> box.covers(place)))
                .toList();
        this.holes = Holes.of(space, space.whole(), audited.boxes(), missed);
    }

    boolean complete() {
        return holes.complete();
    }

    List<AuditFinding> findings() {
        List<AuditFinding> findings = new ArrayList<>();
        holes.boxes().forEach(gap -> findings.add(finding(gap)));
        return findings;
    }

    private AuditFinding finding(Box gap) {
        TableSpace space = audited.space();
        Map<String, CaseValue> example = space.sample(gap);
        List<Integer> points = IntStream.range(0, audited.width())
                .filter(column -> space.isPoint(gap, column))
                .boxed()
                .toList();
        PolicyWords policies = new PolicyWords(audited);
        List<RegionPart> region =
                points.isEmpty() ? audited.region(gap) : RegionParts.causesFirst(audited, gap, points);
        return new AuditFinding(
                points.isEmpty() ? FindingKind.GAP : FindingKind.GAP_AT_LIMIT,
                Severity.ERROR,
                "No rule matches" + (region.isEmpty() ? " any case" : ""),
                List.of(),
                List.of(),
                region,
                AuditedTable.cells(example),
                policies.answer(audited.matching(example)),
                sites.of(List.of(gap), List.of()),
                policies.byPolicy(List.of()),
                new Mends(audited).ofGap(gap));
    }
}
