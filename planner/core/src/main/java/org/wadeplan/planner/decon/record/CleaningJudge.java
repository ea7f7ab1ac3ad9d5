package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.decon.CreditedEvidence;
import org.wadeplan.planner.decon.PestsAtWater;
import org.wadeplan.planner.decon.Recipe;
import org.wadeplan.planner.decon.Words;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * Judges the cleanings on record, each set's in order of time. A record is accepted where nothing stands against it and it
 * does what a row of the table asks for; all that stands against it is said at once. Nothing is credited that no row
 * supports, and an override never is.
 */
public final class CleaningJudge {

    private final Round round;
    private final CreditedEvidence evidence;
    private final BathFaults baths;
    private final ClockWords clock;
    private final List<KitExposure> exposures;
    private final List<CleaningJudgement> done = new ArrayList<>();

    private CleaningJudge(Round round, List<KitExposure> exposures) {
        this.round = round;
        this.exposures = exposures;
        this.evidence = new CreditedEvidence(round.biosecurity(), round.header().firstDay());
        this.baths = new BathFaults(round);
        this.clock = new ClockWords(round.header().zone());
    }

    /**
     * One judgement for each cleaning on record, by start, then id.
     *
     * @param exposures every water that each kit set was in, as {@link KitExposures} reads them out of the week in force
     */
    public static List<CleaningJudgement> judge(Round round, List<KitExposure> exposures) {
        CleaningJudge judge = new CleaningJudge(round, exposures);
        round.log().cleanings().stream()
                .sorted(Comparator.comparing(CleaningRecord::startedAt).thenComparing(CleaningRecord::id))
                .forEach(record -> judge.done.add(judge.judge(record)));
        return List.copyOf(judge.done);
    }

    private CleaningJudgement judge(CleaningRecord record) {
        Set<String> faults = new LinkedHashSet<>(form(record));
        Optional<KitSet> set = round.store().kitSet(record.kitSet());
        if (set.isEmpty()) {
            faults.add("kit set " + record.kitSet() + " is not on file");
        }
        if (!evidence.knows(record.treatment())) {
            faults.add("treatment " + record.treatment() + " is not in the round's table");
        }
        faults.addAll(baths.of(record));
        SortedSet<String> pests = pestsOpen(record);
        faults.addAll(secondPerson(record));
        List<Recipe> recipes = new ArrayList<>();
        faults.addAll(readings(record, recipes));
        boolean lasted = record.endedAt().isAfter(record.startedAt());
        return set.filter(one -> lasted && !recipes.isEmpty())
                .map(one -> withPairs(record, faults, recipes, one, pests))
                .orElseGet(() -> judgement(record, List.of(), faults, Set.of()));
    }

    private CleaningJudgement withPairs(
            CleaningRecord record, Set<String> faults, List<Recipe> recipes, KitSet set, SortedSet<String> pests) {
        PairJudge pairs = new PairJudge(evidence, record, clock);
        List<CleaningJudgement.Credit> credits = new ArrayList<>();
        Set<String> gaps = new LinkedHashSet<>();
        for (Pest pest : round.biosecurity().pests()) {
            for (Material material : new TreeSet<>(set.materials())) {
                PairJudge.Finding found = pairs.find(recipes, pest.id(), material);
                found.credit().ifPresent(credits::add);
                if (found.credit().isEmpty() && pests.contains(pest.id())) {
                    (found.doneWrong() ? faults : gaps).add(found.why());
                }
            }
        }
        if (credits.isEmpty() && faults.isEmpty()) {
            faults.add("no row of the table supports it against any pest on any material of " + set.id());
        }
        return judgement(record, credits, faults, gaps);
    }

    private static CleaningJudgement judgement(
            CleaningRecord record, List<CleaningJudgement.Credit> credits, Set<String> faults, Set<String> gaps) {
        List<String> reasons = new ArrayList<>(faults);
        reasons.addAll(gaps);
        boolean accepted = faults.isEmpty();
        Optional<CleaningJudgement.LetGo> override = record.overrideBy()
                .flatMap(by -> record.overrideReason().map(why -> new CleaningJudgement.LetGo(by, why)));
        return new CleaningJudgement(
                record,
                accepted,
                accepted ? List.copyOf(credits) : List.of(),
                record.dryAt(),
                List.copyOf(reasons),
                override);
    }

    private List<String> form(CleaningRecord record) {
        List<String> faults = new ArrayList<>();
        if (!record.endedAt().isAfter(record.startedAt())) {
            faults.add("it ended at " + clock.at(record.endedAt()) + ", not after its start at "
                    + clock.at(record.startedAt()));
        }
        Instant dryNotBefore = record.mode() == TreatmentMode.DRY ? record.startedAt() : record.endedAt();
        record.dryAt()
                .filter(dry -> dry.isBefore(dryNotBefore))
                .ifPresent(dry -> faults.add("it was found dry at " + clock.at(dry) + ", before "
                        + clock.at(dryNotBefore) + ", when it can be dry at the soonest"));
        if (record.overrideBy().isPresent() != record.overrideReason().isPresent()) {
            faults.add("an override needs both a name and a reason, and only "
                    + (record.overrideBy().isPresent() ? "the name" : "the reason") + " is there");
        }
        if (record.overrideBy().filter(record.operator()::equals).isPresent()) {
            faults.add("the override is by " + record.operator() + ", who cleaned it: another person decides");
        }
        exposures.stream()
                .filter(one -> one.kitSet().equals(record.kitSet())
                        && one.from().isBefore(record.endedAt())
                        && one.until().isAfter(record.startedAt()))
                .forEach(one -> faults.add("the set was in " + one.water() + " (" + one.where() + ") from "
                        + clock.at(one.from()) + " to " + clock.at(one.until()) + " by the week in force"));
        return faults;
    }

    /** The recipes that the readings satisfy; where none is, what stands against the nearest. */
    private List<String> readings(CleaningRecord record, List<Recipe> satisfied) {
        List<Recipe> recipes = evidence.recipes(record.treatment(), record.mode());
        if (recipes.isEmpty() && evidence.knows(record.treatment())) {
            return noRow(record, pestsOpen(record));
        }
        Optional<BathRecord> bath = baths.bath(record);
        List<String> fewest = List.of();
        for (Recipe recipe : recipes) {
            List<String> faults = new ArrayList<>(ReadingFaults.of(record, recipe, bath, clock));
            baths.otherAgent(record, recipe.agent()).ifPresent(faults::add);
            if (faults.isEmpty()) {
                satisfied.add(recipe);
            } else if (fewest.isEmpty() || faults.size() < fewest.size()) {
                fewest = faults;
            }
        }
        if (satisfied.isEmpty()) {
            satisfied.addAll(recipes); // so that contact and picking are said at once with the readings
            return fewest;
        }
        return List.of();
    }

    private List<String> noRow(CleaningRecord record, SortedSet<String> open) {
        String mode = Words.lower(record.mode());
        List<String> faults = new ArrayList<>();
        faults.add("no row supports " + record.treatment() + " as " + mode);
        List<Treatment> all = evidence.foundNotEffective(record.treatment(), record.mode());
        List<Treatment> about =
                all.stream().filter(row -> open.contains(row.pest())).toList();
        for (Treatment row : about.isEmpty() ? all : about) {
            faults.add(mode + " of " + row.agent() + " was tested against " + name(row.pest()) + " on "
                    + Words.lower(row.material()) + " items and found not effective: row " + row.id() + ", grade "
                    + row.grade() + " (" + row.source() + ")");
        }
        return faults;
    }

    private String name(String pest) {
        return round.biosecurity().pests().stream()
                .filter(one -> one.id().equals(pest))
                .map(one -> one.id() + " " + one.name())
                .findFirst()
                .orElse(pest);
    }

    /** Pests of the waters that the set was in before, as far as no earlier record clears them. */
    private SortedSet<String> pestsOpen(CleaningRecord record) {
        Clearance clearance = new Clearance(done);
        SortedSet<String> open = new TreeSet<>();
        KitSet set = round.store().kitSet(record.kitSet()).orElse(null);
        for (KitExposure exposure : before(record)) {
            for (String pest : pests(exposure).toCover()) {
                boolean cleared = set != null
                        && set.materials().stream().allMatch(material -> clearance
                                .of(exposure, pest, material, EvidenceGrade.C, record.startedAt())
                                .isPresent());
                if (!cleared) {
                    open.add(pest);
                }
            }
        }
        return open;
    }

    /** Where a pest is known at a water that is still open, a second person looks. */
    private List<String> secondPerson(CleaningRecord record) {
        boolean checked = record.checker()
                .filter(who -> !who.equalsIgnoreCase(record.operator()))
                .isPresent();
        SortedSet<String> open = pestsOpen(record);
        SortedSet<String> known = new TreeSet<>();
        before(record).forEach(exposure -> known.addAll(pests(exposure).known()));
        known.retainAll(open);
        if (checked || known.isEmpty()) {
            return List.of();
        }
        return List.of((record.checker().isPresent()
                        ? "its checker is its operator, " + record.operator()
                        : "nobody checked it")
                + ", and after a water with " + Words.list(known) + " known a second person does");
    }

    private List<KitExposure> before(CleaningRecord record) {
        Instant start = record.startedAt();
        return exposures.stream()
                .filter(one ->
                        one.kitSet().equals(record.kitSet()) && !one.until().isAfter(start))
                .toList();
    }

    private PestsAtWater pests(KitExposure exposure) {
        return PestsAtWater.of(round.biosecurity(), round.header().firstDay(), List.of(exposure.water()));
    }
}
