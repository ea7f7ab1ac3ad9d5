package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.planner.decon.PestsAtWater;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.Words;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Water;

/** Holds what one set touched against what was done to it since, for one water to enter. */
final class LegCheck {

    private final Round round;
    private final TransferRules rules;
    private final KitSet set;
    private final String toWater;
    private final Instant at;
    private final ClockWords clock;
    private final List<ReleaseAnswer.Held> held = new ArrayList<>();
    private final List<ReleaseAnswer.Cleared> cleared = new ArrayList<>();
    private final Set<String> missing = new LinkedHashSet<>();
    private final List<Instant> waits = new ArrayList<>();
    private boolean onlyTime = true;

    LegCheck(Round round, TransferRules rules, KitSet set, String toWater, Instant at) {
        this.round = round;
        this.rules = rules;
        this.set = set;
        this.toWater = toWater;
        this.at = at;
        this.clock = new ClockWords(round.header().zone());
    }

    /** @param own judgements of the set's records that began before the moment */
    ReleaseAnswer answer(List<KitExposure> touched, List<CleaningJudgement> own) {
        state(touched);
        Clearance clearance = new Clearance(own);
        byWater(touched).forEach(exposure -> exposure(exposure, clearance));
        touched.stream()
                .max(Comparator.comparing(KitExposure::until))
                .filter(last -> touched.stream().anyMatch(one -> !one.water().equals(toWater)))
                .ifPresent(last -> dry(last, own));
        List<String> letGo = letGo(touched, own);
        ReleaseAnswer.Verdict verdict = missing.isEmpty()
                ? ReleaseAnswer.Verdict.CLEARED
                : letGo.isEmpty() ? ReleaseAnswer.Verdict.HELD : ReleaseAnswer.Verdict.LET_GO;
        return new ReleaseAnswer(
                set.id(),
                toWater,
                at,
                verdict,
                List.copyOf(held),
                List.copyOf(cleared),
                List.copyOf(missing),
                refused(own),
                letGo,
                earliest(),
                List.of());
    }

    /** One exposure for each water, until the set last came out of it: what cleans it after that, cleans it of all before. */
    private static List<KitExposure> byWater(List<KitExposure> touched) {
        Map<String, KitExposure> last = new LinkedHashMap<>();
        for (KitExposure one : touched) {
            last.merge(one.water(), one, LegCheck::together);
        }
        return List.copyOf(last.values());
    }

    private static KitExposure together(KitExposure first, KitExposure second) {
        String where = first.where().equals(second.where()) ? first.where() : first.where() + ", " + second.where();
        Instant until = first.until().isAfter(second.until()) ? first.until() : second.until();
        return new KitExposure(first.kitSet(), first.water(), where, first.from(), until);
    }

    private Optional<Instant> earliest() {
        if (missing.isEmpty()) {
            return Optional.of(at);
        }
        return onlyTime ? waits.stream().max(Comparator.naturalOrder()) : Optional.empty();
    }

    /** What the store says of the set before anything was done in the round. */
    private void state(List<KitExposure> touched) {
        if (set.state() == StoreState.OUT_OF_SERVICE) {
            never(set.id() + " is out of service"
                    + set.note().map(note -> ": " + note).orElse(""));
        }
        boolean unknownPast = set.state() != StoreState.CLEAN_DRY
                && set.state() != StoreState.OUT_OF_SERVICE
                && set.exposedTo().isEmpty();
        if (unknownPast) {
            never(
                    set.id() + " began the round as " + Words.lower(set.state()).replace('_', '-')
                            + ", and where it has been is not on file: nothing can be cleared before somebody writes that down");
        }
        touched.stream()
                .filter(one -> one.until().isAfter(at))
                .forEach(one -> never("it is in " + one.water() + " (" + one.where() + ") until "
                        + clock.at(one.until()) + " by the week in force"));
    }

    private void exposure(KitExposure exposure, Clearance clearance) {
        String water = exposure.water();
        PestsAtWater pests = PestsAtWater.of(round.biosecurity(), round.header().firstDay(), List.of(water));
        List<String> open = new ArrayList<>();
        if (round.water(water).isEmpty()) {
            never("the water at " + exposure.where() + " is not on file, so nothing can be cleared");
            open.add("not known");
        } else if (!water.equals(toWater)) {
            Turnaround needed = rules.needed(set, List.of(water), toWater);
            for (Turnaround.Uncovered gap : needed.uncovered()) {
                never("no treatment of the table covers " + gap.pest() + " on " + Words.lower(gap.material())
                        + " items, which it may hold from " + water + ": " + gap.why());
                open.add(gap.pest() + " on " + Words.lower(gap.material()) + " items");
            }
            for (Turnaround.Cover asked : needed.covers()) {
                pair(exposure, asked, clearance, pests).ifPresent(open::add);
            }
        }
        held.add(new ReleaseAnswer.Held(water, exposure.where(), exposure.until(), pests.words(), List.copyOf(open)));
    }

    /** The pair in words where nothing clears it yet. */
    private Optional<String> pair(
            KitExposure exposure, Turnaround.Cover asked, Clearance clearance, PestsAtWater pests) {
        String pair = asked.pest() + " on " + Words.lower(asked.material()) + " items";
        boolean strict = intoProtected() || pests.known().contains(asked.pest());
        EvidenceGrade worst = strict ? asked.grade() : EvidenceGrade.C;
        Optional<Clearance.Found> found = clearance.of(exposure, asked.pest(), asked.material(), worst, at);
        if (found.isEmpty()) {
            never("no accepted cleaning since " + clock.at(exposure.until()) + " covers " + pair + " from "
                    + exposure.water() + (strict ? " by evidence of grade " + worst + " or better" : ""));
            return Optional.of(pair);
        }
        CleaningJudgement.Credit credit = found.get().credit();
        var record = found.get().judgement().record();
        cleared.add(new ReleaseAnswer.Cleared(exposure.water(), record.id(), credit.cover(), credit.from()));
        if (strict
                && record.checker()
                        .filter(who -> !who.equals(record.operator()))
                        .isEmpty()) {
            never("cleaning " + record.id()
                    + " has no checker beside its operator, and this leg asks for a second person");
        }
        if (credit.from().isAfter(at)) {
            wait(
                    credit.from(),
                    pair + " from " + exposure.water() + " is covered only from " + clock.at(credit.from())
                            + " on, when the drying after cleaning " + record.id() + " is over");
            return Optional.of(pair);
        }
        return Optional.empty();
    }

    /** Wet kit carries: the last cleaning after the last use, refused or not, was followed by somebody finding it dry. */
    private void dry(KitExposure last, List<CleaningJudgement> own) {
        Optional<CleaningJudgement> latest = own.stream()
                .filter(one -> !one.record().startedAt().isBefore(last.until()))
                .max(Comparator.comparing(one -> one.record().endedAt()));
        if (latest.isEmpty()) {
            return; // said pair by pair already
        }
        Optional<Instant> dryAt = latest.get().dryAt();
        String cleaning = "cleaning " + latest.get().record().id();
        if (dryAt.isEmpty()) {
            never("nobody found it dry to the touch inside and out after " + cleaning);
        } else if (dryAt.get().isAfter(at)) {
            wait(dryAt.get(), "it was found dry to the touch only at " + clock.at(dryAt.get()));
        }
    }

    private boolean intoProtected() {
        return round.water(toWater).map(Water::protectedWater).orElse(true);
    }

    private void never(String why) {
        onlyTime = false;
        missing.add(why);
    }

    private void wait(Instant until, String why) {
        waits.add(until);
        missing.add(why);
    }

    private List<String> refused(List<CleaningJudgement> own) {
        return own.stream()
                .filter(one -> !one.accepted())
                .map(one -> one.record().id() + " (" + one.record().treatment() + ", "
                        + Words.lower(one.record().mode()) + ", "
                        + clock.at(one.record().startedAt()) + "): "
                        + String.join("; ", one.reasons()))
                .toList();
    }

    /** Overrides since the last use: shown, and worth nothing as a cleaning. */
    private List<String> letGo(List<KitExposure> touched, List<CleaningJudgement> own) {
        Instant last = touched.stream()
                .map(KitExposure::until)
                .max(Comparator.naturalOrder())
                .orElse(Instant.MIN);
        List<String> words = new ArrayList<>();
        for (CleaningJudgement one : own) {
            boolean counts = !one.record().startedAt().isBefore(last)
                    && !one.reasons().stream().anyMatch(why -> why.contains("override"));
            if (counts) {
                one.override()
                        .ifPresent(by -> words.add("let go by " + by.by() + " although cleaning "
                                + one.record().id() + " does not clear it: " + by.reason() + ". It is not clean."));
            }
        }
        return List.copyOf(words);
    }
}
