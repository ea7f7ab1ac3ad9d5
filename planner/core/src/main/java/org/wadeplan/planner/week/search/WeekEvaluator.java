package org.wadeplan.planner.week.search;

import java.util.Arrays;
import java.util.Optional;

/**
 * Walks every crew through the whole week in order of date and crew, with kit sets, baths, rest and certified items
 * shared. Either the week holds, with its score, or the first rule that it breaks.
 *
 * <p>A crew-day starts as late as it can without ending later, less a little slack, so that no crew waits for nothing.
 */
final class WeekEvaluator {

    /** How much earlier than the latest possible start a crew sets out where it would wait anyway, minutes. */
    private static final int START_SLACK_MIN = 30;

    private static final int MOST_TRIES = 8;

    private static final int LONG_AGO = Integer.MIN_VALUE / 2;

    private final WeekModel model;
    private final KitLedger ledger;
    private final KitLedger atDayStart;
    private final BayBook bays;
    private final CertifiedUse uses;
    private final DayLog log = new DayLog();
    private final DayKit kit;
    private final DayWalk walk;
    private final int[] personFree;
    private final int[] vehicleFree;
    private final int[] crewWater;
    private final long[] levels = new long[Score.LEVELS];
    private boolean explain;
    private String failure = "";
    private boolean onlyUnfinished;
    private boolean quick = true;
    private long evaluations;

    WeekEvaluator(WeekModel model) {
        this.model = model;
        this.ledger = new KitLedger(model.kitSets().size());
        this.atDayStart = new KitLedger(model.kitSets().size());
        this.bays = new BayBook(model.resources());
        this.uses = new CertifiedUse(model);
        this.kit = new DayKit(model, ledger, bays, log);
        this.walk = new DayWalk(model, log, uses, kit);
        this.personFree = new int[model.personCount()];
        this.vehicleFree = new int[model.vehicleCount()];
        this.crewWater = new int[model.crewCount()];
    }

    Optional<Score> score(WeekState state) {
        quick = true;
        return evaluate(state, false, false);
    }

    /** The score, with every activity left in {@link #log}. */
    Optional<Score> scoreAndLog(WeekState state) {
        Optional<Score> rough = score(state);
        quick = false;
        Optional<Score> fine = evaluate(state, true, false);
        if (fine.isPresent() && rough.isPresent() && fine.get().compareTo(rough.get()) <= 0) {
            return fine;
        }
        quick = true;
        return evaluate(state, true, false);
    }

    /** True where every crew-day so far can be walked, though traps may still lie in the water. */
    boolean walks(WeekState state) {
        return evaluate(state, false, false).isPresent() || onlyUnfinished;
    }

    /** The first rule that a week breaks, in a sentence; empty where it breaks none. */
    Optional<String> firstBroken(WeekState state) {
        return evaluate(state, false, true).isPresent() ? Optional.empty() : Optional.of(failure);
    }

    DayLog log() {
        return log;
    }

    long evaluations() {
        return evaluations;
    }

    private Optional<Score> evaluate(WeekState state, boolean logging, boolean explaining) {
        evaluations++;
        restart(logging, explaining);
        for (int i = 0; i < state.stops().length; i++) {
            if (state.stops()[i].length > 0 && !day(model.slots().get(i), state.stops()[i], state.decon()[i])) {
                return Optional.empty();
            }
        }
        if (leftDirty()) {
            onlyUnfinished = true;
            failure = "a kit set would be left dirty, or traps in the water, at the end of the round";
            return Optional.empty();
        }
        if (!model.packs().enough(model, state)) {
            failure = explain ? model.packs().words(model, state) : "";
            return Optional.empty();
        }
        if (!uses.enough(explain)) {
            failure = uses.failure();
            return Optional.empty();
        }
        countUnplaced(state);
        return Optional.of(new Score(levels.clone()));
    }

    private void restart(boolean logging, boolean explaining) {
        explain = explaining;
        failure = "";
        onlyUnfinished = false;
        ledger.start(model);
        bays.backTo(0);
        uses.clear();
        log.clear(logging);
        walk.restart(explaining);
        kit.takeDirtyToClean();
        Arrays.fill(personFree, LONG_AGO);
        Arrays.fill(vehicleFree, LONG_AGO);
        Arrays.fill(crewWater, -1);
        Arrays.fill(levels, 0);
    }

    private boolean day(Slot slot, int[] stops, int decon) {
        atDayStart.copyFrom(ledger);
        int bayMark = bays.mark();
        int useMark = uses.mark();
        int start = slot.earliestMin();
        for (int person : slot.people()) {
            start = Math.max(start, personFree[person] + model.duty().minRestMin());
        }
        start = Math.max(start, vehicleFree[slot.vehicle()]);
        int maxShift = model.duty().maxShiftMin();
        boolean walked = tryWalk(slot, stops, decon, start, bayMark, useMark);
        for (int i = 0; i < MOST_TRIES && mustStartLater(walked, start); i++) {
            start = walked ? walk.end() - maxShift : start + walk.gapExcessMin();
            walked = tryWalk(slot, stops, decon, start, bayMark, useMark);
        }
        if (!walked) {
            failure = walk.failure().isEmpty() ? kit.failure() : walk.failure();
            return false;
        }
        if (walk.end() - start > maxShift || walk.end() > slot.latestEndMin()) {
            failure = explain ? hoursWords(slot, start) : "";
            return false;
        }
        start = unhurriedStart(slot, stops, decon, start, bayMark, useMark);
        rewind(bayMark, useMark);
        log.forget(slot.index());
        walk.run(slot, stops, decon, start, true);
        close(slot, stops);
        return true;
    }

    private boolean mustStartLater(boolean walked, int start) {
        return walked ? walk.end() - start > model.duty().maxShiftMin() : walk.gapExcessMin() > 0;
    }

    /** In a quick evaluation only the wait before the first visit is saved; the plan as written saves every other too. */
    private int unhurriedStart(Slot slot, int[] stops, int decon, int start, int bayMark, int useMark) {
        if (quick) {
            return start + walk.waitBeforeVisitMin();
        }
        int latest = latestStart(slot, stops, decon, start, bayMark, useMark);
        int early = Math.max(start, latest - START_SLACK_MIN);
        boolean walked = tryWalk(slot, stops, decon, early, bayMark, useMark);
        return walked ? Math.min(latest, early + walk.waitBeforeVisitMin()) : latest;
    }

    private boolean tryWalk(Slot slot, int[] stops, int decon, int start, int bayMark, int useMark) {
        rewind(bayMark, useMark);
        return walk.run(slot, stops, decon, start, false);
    }

    private void rewind(int bayMark, int useMark) {
        ledger.copyFrom(atDayStart);
        bays.backTo(bayMark);
        uses.backTo(useMark);
        kit.takeDirtyToClean();
    }

    /** The latest start that ends the day no later: found by halving, because a later start never ends sooner. */
    private int latestStart(Slot slot, int[] stops, int decon, int start, int bayMark, int useMark) {
        int end = walk.end();
        int low = start;
        int high = start + walk.waitMin();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (tryWalk(slot, stops, decon, middle, bayMark, useMark) && walk.end() <= end) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private void close(Slot slot, int[] stops) {
        for (int person : slot.people()) {
            personFree[person] = walk.end();
        }
        vehicleFree[slot.vehicle()] = walk.end();
        levels[Score.DIRTY_TO_CLEAN] += kit.takeDirtyToClean();
        levels[Score.CREW_MINUTES] += walk.workMin();
        for (int id : stops) {
            Stop stop = model.stops().get(id);
            levels[Score.LATENESS] += slot.dateIndex();
            levels[Score.RESERVE_VISITS] += slot.reserve() ? 1 : 0;
            if (stop.wets()) {
                levels[Score.DIRTY_TO_CLEAN] += model.dirtyToClean(crewWater[slot.crew()], stop.water()) ? 1 : 0;
                crewWater[slot.crew()] = stop.water();
            }
        }
        for (int set = 0; set < model.kitSets().size(); set++) {
            if (ledger.dirtyAtDepot(set) && ledger.lastSlot[set] == slot.index()) {
                levels[Score.PUT_ASIDE]++;
            }
        }
    }

    private boolean leftDirty() {
        for (int set = 0; set < model.kitSets().size(); set++) {
            if (ledger.lastSlot[set] >= 0 && ledger.dirtyFrom[set] != KitLedger.CLEAN) {
                return true;
            }
        }
        return false;
    }

    private void countUnplaced(WeekState state) {
        boolean[] placed = new boolean[model.jobs().size()];
        for (int[] stops : state.stops()) {
            for (int stop : stops) {
                placed[model.stops().get(stop).job()] = true;
            }
        }
        for (Job job : model.jobs()) {
            levels[Score.unplacedLevel(job.priority())] += placed[job.index()] ? 0 : 1;
        }
    }

    private String hoursWords(Slot slot, int start) {
        int shift = walk.end() - start;
        return shift > model.duty().maxShiftMin()
                ? slot.name() + ": the day would take " + shift + " min, from "
                        + model.axis().words(start) + " to " + model.axis().words(walk.end())
                        + "; the longest shift is " + model.duty().maxShiftMin()
                : slot.name() + ": the day would end at " + model.axis().words(walk.end()) + ", after "
                        + model.axis().words(slot.latestEndMin());
    }
}
