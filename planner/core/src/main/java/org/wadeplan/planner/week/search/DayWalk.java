package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.search.DayLog.Entry;

/** Walks one crew through one day from a start minute: every activity as early as the one before it allows. */
final class DayWalk {

    private final WeekModel model;
    private final DayLog log;
    private final CertifiedUse uses;
    private final DayKit kit;
    /** Start of each stop in the evaluation so far, {@link Integer#MIN_VALUE} where it has not come up. */
    final int[] partStart;

    private Slot slot;
    private int[] stops = new int[0];
    private int clock;
    private int place;
    private int wetSite;
    private int workMin;
    private int waitMin;
    private int waitBeforeVisitMin;
    private int gapExcessMin;
    private boolean visited;
    private boolean explain;
    private String failure = "";

    DayWalk(WeekModel model, DayLog log, CertifiedUse uses, DayKit kit) {
        this.model = model;
        this.log = log;
        this.uses = uses;
        this.kit = kit;
        this.slot = model.slots().get(0);
        this.partStart = new int[model.stops().size()];
    }

    void restart(boolean explaining) {
        Arrays.fill(partStart, Integer.MIN_VALUE);
        explain = explaining;
        failure = "";
    }

    int end() {
        return clock;
    }

    /** Minutes of travel, rinsing and cleaning. */
    int workMin() {
        return workMin;
    }

    int waitMin() {
        return waitMin;
    }

    /** Waiting before the first visit, minutes: a later start saves it. */
    int waitBeforeVisitMin() {
        return waitBeforeVisitMin;
    }

    /** By how much a part came too late after the part before it on the same day, minutes; a later start mends it. */
    int gapExcessMin() {
        return gapExcessMin;
    }

    String failure() {
        return failure;
    }

    /** False where the day cannot be walked; {@link #failure} then says why. */
    boolean run(Slot day, int[] sequence, int decon, int start, boolean helpOthers) {
        slot = day;
        stops = sequence;
        clock = start;
        place = model.depot();
        workMin = 0;
        waitMin = 0;
        waitBeforeVisitMin = 0;
        gapExcessMin = 0;
        visited = false;
        stay(ActivityKind.LOAD, model.duty().loadMin(), "load and check");
        int from = 0;
        while (from < stops.length) {
            int until = segmentEnd(from);
            if (from > 0) {
                changeKit(from, until);
            }
            if (!segment(from, until)) {
                return false;
            }
            from = until;
        }
        goHome();
        workMin += kit.endOfDay(this, slot, decon, start, helpOthers);
        stay(ActivityKind.UNLOAD, model.duty().unloadMin(), "unload");
        return true;
    }

    /** Stops up to the next one in another water; parts that wet nothing go with what is before them. */
    private int segmentEnd(int from) {
        int water = -1;
        for (int i = from; i < stops.length; i++) {
            Stop stop = model.stops().get(stops[i]);
            if (stop.wets()) {
                if (water >= 0 && stop.water() != water) {
                    return i;
                }
                water = stop.water();
            }
        }
        return stops.length;
    }

    private boolean segment(int from, int until) {
        List<Stop> part = new ArrayList<>(until - from);
        for (int i = from; i < until; i++) {
            part.add(model.stops().get(stops[i]));
        }
        if (!kit.take(slot, part, clock)) {
            return fail(kit::failure);
        }
        waitUntil(kit.readyAt(), "kit set released");
        if (kit.rinseFirst()) {
            rinse("check and rinse a set kept for the same water");
        }
        wetSite = -1;
        int leaves = clock;
        for (Stop stop : part) {
            if (!visit(stop)) {
                return false;
            }
        }
        int back = Math.max(clock, allowedDeparture(clock, drive(model.depot()))) + drive(model.depot());
        noteUses(part, leaves, back);
        return true;
    }

    private void noteUses(List<Stop> part, int leaves, int back) {
        for (int kind = 0; kind < model.kinds().size(); kind++) {
            int most = 0;
            for (Stop stop : part) {
                for (Stop.CertifiedNeed need : stop.needs()) {
                    if (need.kind() == kind) {
                        most = Math.max(most, need.on(slot));
                    }
                }
            }
            if (most > 0) {
                uses.add(kind, slot.index(), leaves, back, most);
            }
        }
    }

    private boolean visit(Stop stop) {
        if (stop.wets() && wetSite >= 0 && wetSite != stop.place()) {
            rinse("check and rinse between sites of one water");
        }
        travelTo(stop.place());
        int ready = Math.max(clock, earliestAfterPartBefore(stop));
        if (ready == Integer.MAX_VALUE) {
            return fail(() -> stop.name() + " would come before the part that it follows");
        }
        int start = startInWindow(stop, ready);
        if (start == Integer.MAX_VALUE) {
            return fail(() -> slot.name() + ": " + stop.name() + " could start at "
                    + model.axis().words(ready) + " and then does not end inside a window " + windowWords(stop));
        }
        if (stop.orderInJob() > 0 && start > latestAfterPartBefore(stop)) {
            gapExcessMin = stop.onLaterDay() ? 0 : start - latestAfterPartBefore(stop);
            return fail(() -> slot.name() + ": " + stop.name() + " would start at "
                    + model.axis().words(start) + ", later than the longest gap allows ("
                    + model.axis().words(latestAfterPartBefore(stop)) + ")");
        }
        waitUntil(start, "wait for the window");
        partStart[stop.id()] = start;
        clock = start + stop.p80Min();
        visited = true;
        List<Integer> wet = kit.use(slot, stop, clock);
        log.add(new Entry(slot.index(), ActivityKind.VISIT, start, clock, place, stop.id(), wet, ""));
        if (stop.wets()) {
            wetSite = stop.place();
        }
        return true;
    }

    private int earliestAfterPartBefore(Stop stop) {
        if (stop.orderInJob() == 0) {
            return Integer.MIN_VALUE;
        }
        Stop before = model.jobs().get(stop.job()).stops().get(stop.orderInJob() - 1);
        int started = partStart[before.id()];
        if (started == Integer.MIN_VALUE) {
            return Integer.MAX_VALUE;
        }
        return Math.max(
                started + before.p80Min(), started + stop.part().gapMinMin().orElse(0));
    }

    private int latestAfterPartBefore(Stop stop) {
        Stop before = model.jobs().get(stop.job()).stops().get(stop.orderInJob() - 1);
        return partStart[before.id()] + stop.part().gapMaxMin().orElse(1_000_000);
    }

    private int startInWindow(Stop stop, int ready) {
        int[] windows = stop.windowMin()[slot.dateIndex()];
        for (int i = 0; i < windows.length; i += 2) {
            int start = Math.max(ready, windows[i]);
            if (start + stop.p80Min() <= windows[i + 1]) {
                return start;
            }
        }
        return Integer.MAX_VALUE;
    }

    private String windowWords(Stop stop) {
        StringBuilder words = new StringBuilder();
        int[] windows = stop.windowMin()[slot.dateIndex()];
        for (int i = 0; i < windows.length; i += 2) {
            words.append(words.length() == 0 ? "" : ", ")
                    .append(model.axis().words(windows[i]))
                    .append(" to ")
                    .append(model.axis().words(windows[i + 1]));
        }
        return words + " (needs " + stop.p80Min() + " min)";
    }

    /** At the depot between two waters: cleans what came back only where the wait for the next window hides it. */
    private void changeKit(int from, int until) {
        goHome();
        Stop next = model.stops().get(stops[from]);
        int leaveMin = model.duty().loadMin() + model.driveMin()[model.depot()][next.place()];
        int without = startInWindow(next, clock + leaveMin);
        if (without != Integer.MAX_VALUE && until > from) {
            workMin += kit.cleanWhileWaiting(this, slot, free -> startInWindow(next, free + leaveMin) <= without);
        }
        stay(ActivityKind.LOAD, model.duty().loadMin(), "change kit set, load and check");
    }

    private void goHome() {
        travelTo(model.depot());
        kit.back(slot, clock);
    }

    private void travelTo(int to) {
        int minutes = drive(to);
        if (minutes == 0) {
            return;
        }
        waitUntil(allowedDeparture(clock, minutes), "no driving yet");
        log.add(new Entry(slot.index(), ActivityKind.TRAVEL, clock, clock + minutes, to, -1, List.of(), ""));
        clock += minutes;
        workMin += minutes;
        place = to;
    }

    private int drive(int to) {
        return model.driveMin()[place][to];
    }

    private int allowedDeparture(int wish, int minutes) {
        int departure = wish;
        boolean moved = true;
        while (moved) {
            int later = after(slot.noDriving(), after(slot.darkness(), departure, minutes), minutes);
            moved = later > departure;
            departure = later;
        }
        return departure;
    }

    private static int after(int[] barred, int departure, int minutes) {
        for (int i = 0; i < barred.length; i += 2) {
            if (departure < barred[i + 1] && departure + minutes > barred[i]) {
                return barred[i + 1];
            }
        }
        return departure;
    }

    private void rinse(String note) {
        int minutes = model.rinseMin();
        log.add(new Entry(
                slot.index(), ActivityKind.RINSE, clock, clock + minutes, place, -1, kit.carried(slot), note));
        clock += minutes;
        workMin += minutes;
    }

    private void stay(ActivityKind kind, int minutes, String note) {
        log.add(new Entry(slot.index(), kind, clock, clock + minutes, place, -1, List.of(), note));
        clock += minutes;
    }

    private void waitUntil(int minute, String note) {
        if (minute > clock) {
            waitMin += minute - clock;
            waitBeforeVisitMin += visited ? 0 : minute - clock;
            log.add(new Entry(slot.index(), ActivityKind.WAIT, clock, minute, place, -1, List.of(), note));
            clock = minute;
        }
    }

    int now() {
        return clock;
    }

    /** Lets the crew be busy at the depot with cleaning until a minute. */
    void cleanUntil(int minute, List<Integer> sets) {
        log.add(new Entry(slot.index(), ActivityKind.DECON, clock, minute, place, -1, sets, ""));
        clock = minute;
    }

    void backTo(int minute) {
        clock = minute;
    }

    private boolean fail(Supplier<String> why) {
        if (explain) {
            failure = why.get();
        }
        return false;
    }
}
