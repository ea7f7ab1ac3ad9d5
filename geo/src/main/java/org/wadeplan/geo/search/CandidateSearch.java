package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.reach.LengthBand;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;

/**
 * Finds candidate reaches along all lines between confluences.
 *
 * <p>First every line is parted into what is ruled out, with every reason, and what is left; then reaches are fitted into
 * what is left, scored, and the best taken that do not overlap. All of it works on measures along the lines; no shape is
 * made before a candidate is reported. The same ground and rules give the same result, whatever the order of the lines.
 */
public final class CandidateSearch {

    private static final int RUNS_BETWEEN_REPORTS = 4096;

    private final Groundwork work;
    private final SearchRules rules;
    private final SearchWatch watch;
    private final RunBlocks ruledOut;
    private final List<FitCount> counts = new ArrayList<>();

    /** Works out what is ruled out: the longer part of a search. */
    public CandidateSearch(SearchGround ground, SearchRules rules, SearchWatch watch) {
        this.rules = rules;
        this.watch = watch;
        this.work = new Groundwork(ground, rules, watch);
        RunBlocks straight = work.ruledOut(ClearBy.STRAIGHT);
        RunBlocks along = work.ruledOut(ClearBy.ALONG);
        counts.add(count(ClearBy.STRAIGHT, straight));
        counts.add(count(ClearBy.ALONG, along));
        this.ruledOut = rules.clearBy() == ClearBy.STRAIGHT ? straight : along;
    }

    private FitCount count(ClearBy clearBy, RunBlocks blocks) {
        double ruledOutM = 0;
        int whole = 0;
        int[] clear = new int[1];
        for (int run = 0; run < work.runs().count(); run++) {
            if (work.inScope(run)) {
                double lengthM = work.runs().lengthM(run);
                double reachM = work.sizes().lengthM(run);
                List<double[]> free = blocks.free(run, lengthM);
                ruledOutM += lengthM
                        - free.stream().mapToDouble(part -> part[1] - part[0]).sum();
                whole += Fitting.whole(lengthM, reachM);
                Fitting.endToEnd(free, lengthM, reachM, start -> clear[0]++);
            }
        }
        return new FitCount(clearBy, ruledOutM, whole, clear[0]);
    }

    /** The best candidates, and where the rest of the length went. */
    public SearchResult result() {
        LengthTally.Counter tally = new LengthTally.Counter();
        Starts starts = new Starts(work.runs());
        Scorer scorer = new Scorer(work);
        boolean complete = !work.cancelled();
        for (int run = 0; complete && run < work.runs().count(); run++) {
            if (run % RUNS_BETWEEN_REPORTS == 0) {
                watch.report("candidates", run, work.runs().count());
                complete = !watch.cancelled();
            }
            if (work.inScope(run)) {
                tally(run, tally);
                starts(run, scorer, starts);
            }
        }
        return new SearchResult(
                complete,
                complete ? chosen(starts, scorer) : List.of(),
                starts.count(),
                tally.tally(),
                counts,
                List.copyOf(work.notChecked()));
    }

    private void tally(int run, LengthTally.Counter tally) {
        double reachM = work.sizes().lengthM(run);
        for (Atoms.Atom atom : Atoms.of(ruledOut.of(run), work.runs().lengthM(run))) {
            double lengthM = atom.toM() - atom.fromM();
            if (!atom.blocks().isEmpty()) {
                tally.ruledOut(
                        lengthM,
                        atom.blocks().stream()
                                .map(block -> work.hindrances().get(block.hindrance()))
                                .toList());
            } else if (Fitting.holdsOne(new double[] {atom.fromM(), atom.toM()}, reachM)) {
                tally.usable(lengthM);
            } else {
                tally.tooShort(lengthM);
            }
        }
    }

    private void starts(int run, Scorer scorer, Starts starts) {
        double runM = work.runs().lengthM(run);
        double reachM = work.sizes().lengthM(run);
        Fitting.starts(
                rules.layout(),
                ruledOut.free(run, runM),
                runM,
                reachM,
                startM -> starts.add(run, startM, scorer.atMost(run, Math.max(0, startM - reachM), startM)));
    }

    /** Best first; slope and access of a start are asked for only once it stands first. */
    private List<Candidate> chosen(Starts starts, Scorer scorer) {
        List<Candidate> chosen = new ArrayList<>();
        Occupied occupied = new Occupied(work.runs(), work.spread(), rules.minGapM());
        Map<String, Integer> ofGroup = new HashMap<>();
        starts.order();
        while (!starts.isEmpty() && chosen.size() < rules.best()) {
            int start = starts.best();
            int run = starts.run(start);
            double toM = starts.startM(start);
            double fromM = Math.max(0, toM - work.sizes().lengthM(run));
            String group = work.ground().traits().group(work.runs().place(run, toM));
            boolean groupFull = rules.bestOfGroup().isPresent()
                    && ofGroup.getOrDefault(group, 0) >= rules.bestOfGroup().getAsInt();
            if (groupFull || occupied.touches(run, fromM, toM)) {
                starts.dropBest();
            } else if (!starts.isExact(start)) {
                starts.rescoreBest(scorer.score(run, fromM, toM).points());
            } else {
                starts.dropBest();
                occupied.take(run, fromM, toM);
                ofGroup.merge(group, 1, Integer::sum);
                chosen.add(candidate(chosen.size() + 1, run, fromM, toM, scorer));
            }
        }
        return chosen;
    }

    private Candidate candidate(int rank, int run, double fromM, double toM, Scorer scorer) {
        Sizing.Sized size = (Sizing.Sized) work.sizes().of(run);
        List<LineStretch> stretches = work.runs().stretches(run, fromM, toM);
        CandidateFacts facts = work.ground().facts();
        LineStretch longest = Scorer.longest(stretches);
        StretchFacts known = new StretchFacts(
                facts.order(longest), facts.width(longest), facts.slope(longest), facts.walkIn(stretches.get(0)));
        return new Candidate(
                rank,
                work.runs().place(run, toM),
                stretches,
                size.rule(),
                size.words(),
                scorer.score(run, fromM, toM),
                known,
                LengthBand.of(Scorer.shape(work.ground(), stretches), known.width()),
                UncheckedLimits.of(rules.limits(), known));
    }

    /** Every stretch that holds no reach, with every reason, line by line from each run's upper end down. */
    public List<RejectedStretch> rejected() {
        Rejections rejections = new Rejections(work, rules.clearBy());
        List<RejectedStretch> all = new ArrayList<>();
        runsByRank().filter(work::inScope).forEach(run -> all.addAll(rejections.of(run, ruledOut)));
        return all;
    }

    private IntStream runsByRank() {
        Runs runs = work.runs();
        Comparator<Integer> order = Comparator.comparing(
                        (Integer run) -> runs.rank(work.ground().graph().line(runs.piece(run, 0))))
                .thenComparing(run -> work.ground().graph().fromM(runs.piece(run, 0)));
        return IntStream.range(0, runs.count()).boxed().sorted(order).mapToInt(each -> each);
    }

    /** How far a start must move along its stream so that nothing is in its reach's way. */
    public StartMove move(LinePlace start) {
        return new StartMover(work, ruledOut, rules).of(start);
    }
}
