package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.space.Box;

/** Rules that match the same cases: contradictions where they differ, overlaps where they agree. */
final class MeetingFinder {

    private final AuditedTable audited;
    private final SiteFinder sites;
    private final List<Overlaps.Meeting> meetings;

    MeetingFinder(AuditedTable audited, List<SiteCase> cases, List<Overlaps.Meeting> meetings) {
        this.audited = audited;
        this.sites = new SiteFinder(audited, cases);
        this.meetings = meetings;
    }

    List<AuditFinding> findings() {
        return meetings.stream().map(this::finding).toList();
    }

    private AuditFinding finding(Overlaps.Meeting meeting) {
        List<Box> shared = meeting.rules().stream()
                .flatMap(a -> meeting.others().stream()
                        .map(b ->
                                audited.boxes().get(a).intersect(audited.boxes().get(b))))
                .toList();
        List<Integer> causes = IntStream.range(0, audited.width())
                .filter(column -> !audited.space().isFree(meeting.cause(), column))
                .boxed()
                .toList();
        boolean atLimit = causes.stream().anyMatch(column -> audited.space().isPoint(meeting.cause(), column));
        Map<String, CaseValue> example = audited.space().sample(shared.get(0));
        List<TableRule> matching = audited.matching(example);
        List<SiteHit> hits = sites.of(shared, causes);
        PolicyWords policies = new PolicyWords(audited);
        return new AuditFinding(
                kind(meeting.same(), atLimit),
                severity(meeting.same(), hits),
                headline(meeting),
                audited.numbers(meeting.rules()),
                audited.numbers(meeting.others()),
                RegionParts.causesFirst(audited, RegionParts.common(audited, shared), causes),
                AuditedTable.cells(example),
                policies.answer(matching),
                hits,
                policies.byPolicy(matching),
                mends(meeting, causes));
    }

    private static FindingKind kind(boolean same, boolean atLimit) {
        if (same) {
            return atLimit ? FindingKind.OVERLAP_AT_LIMIT : FindingKind.OVERLAP;
        }
        return atLimit ? FindingKind.CONTRADICTION_AT_LIMIT : FindingKind.CONTRADICTION;
    }

    /** Under UNIQUE a site that two rules match has no method, even where they agree. */
    private Severity severity(boolean same, List<SiteHit> hits) {
        HitPolicy policy = audited.table().hitPolicy();
        boolean hit = hits.stream().anyMatch(site -> site.how() == SiteHit.How.HIT);
        if (policy.ranks() || (same && policy != HitPolicy.UNIQUE)) {
            return Severity.NOTE;
        }
        boolean error = same ? hit : hit || !policy.lists();
        return error ? Severity.ERROR : Severity.WARNING;
    }

    private String headline(Overlaps.Meeting meeting) {
        boolean one = meeting.rules().size() == 1;
        String rules = RuleList.words(audited.numbers(meeting.rules()));
        String others = RuleList.words(audited.numbers(meeting.others()));
        String sides = "R" + rules.substring(1) + (one ? "" : " each");
        List<String> left = audited.results(meeting.rules());
        List<String> right = audited.results(meeting.others());
        if (meeting.same()) {
            return sides + (one ? " overlaps " : " overlap ") + others + "; all say " + RuleList.joined(left);
        }
        String verb = one ? " contradicts " : " contradict ";
        return left.equals(right) && left.size() == 1
                ? sides + verb + others + ": all say " + left.get(0) + ", but they differ in " + otherOutputs(meeting)
                : sides + verb + others + ": " + RuleList.joined(left) + " against " + RuleList.joined(right);
    }

    /** The names of the outputs in which some of the rules differ. */
    private String otherOutputs(Overlaps.Meeting meeting) {
        List<Integer> all = Stream.concat(meeting.rules().stream(), meeting.others().stream())
                .toList();
        List<String> names = new ArrayList<>();
        for (int column = 0; column < audited.table().outputs().size(); column++) {
            int at = column;
            List<String> values = all.stream()
                    .map(index -> audited.rule(index).outputs().get(at).orElse("-"))
                    .distinct()
                    .toList();
            if (values.size() > 1) {
                names.add(audited.table().outputs().get(column).name() + " ("
                        + values.stream().collect(Collectors.joining(", ")) + ")");
            }
        }
        return RuleList.joined(names);
    }

    private List<String> mends(Overlaps.Meeting meeting, List<Integer> causes) {
        Mends mends = new Mends(audited);
        return causes.isEmpty() ? mends.ofInside(meeting) : mends.ofCut(meeting, causes.get(0));
    }
}
