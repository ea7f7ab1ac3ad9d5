package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.decon.schedule.AgreedBaths;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.TreatmentMode;

/** A sheet as it comes back, of a cleaning that was done as it should be, to spoil in one place. */
final class Records {

    private String id = "C1";
    private final String kitSet;
    private final String treatment;
    private TreatmentMode mode = TreatmentMode.SOAK;
    private Optional<String> bath = Optional.empty();
    private final Instant start;
    private Instant end;
    private OptionalDouble tempStartC = OptionalDouble.empty();
    private OptionalDouble tempEndC = OptionalDouble.empty();
    private OptionalDouble strengthStart = OptionalDouble.empty();
    private OptionalDouble strengthEnd = OptionalDouble.empty();
    private boolean picked = true;
    private boolean rinsed = true;
    private Optional<Instant> dryAt = Optional.empty();
    private Optional<String> checker = Optional.of("beatriz");
    private Optional<String> overrideBy = Optional.empty();
    private Optional<String> overrideReason = Optional.empty();

    private Records(String kitSet, String treatment, String start, int minutes) {
        this.kitSet = kitSet;
        this.treatment = treatment;
        this.start = Instant.parse(start);
        this.end = this.start.plusSeconds(60L * minutes);
    }

    /** A dip whose thermometer read half a degree above the target, first and last. */
    static Records dip(String kitSet, String treatment, double tempC, String start, int minutes) {
        Records record = new Records(kitSet, treatment, start, minutes);
        record.tempStartC = OptionalDouble.of(tempC + 0.5);
        record.tempEndC = OptionalDouble.of(tempC + 0.5);
        return record;
    }

    /** A soak in bath B1 of 20 g/L that read 21 and 20. */
    static Records soak(String kitSet, String start, int minutes) {
        Records record = new Records(kitSet, "oxidiser-bath", start, minutes);
        record.bath = Optional.of("B1");
        record.strengthStart = OptionalDouble.of(21);
        record.strengthEnd = OptionalDouble.of(20);
        return record;
    }

    static Records other(String kitSet, String treatment, TreatmentMode mode, String start, int minutes) {
        Records record = new Records(kitSet, treatment, start, minutes);
        record.mode = mode;
        return record;
    }

    static BathRecord bath(String madeAt) {
        return new BathRecord(
                "B1",
                "oxidiser-tub",
                "oxidiser",
                Instant.parse(madeAt),
                60,
                OptionalDouble.of(20),
                Optional.of("g/L product"),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of("C1"),
                Optional.empty());
    }

    Records named(String name) {
        id = name;
        return this;
    }

    Records as(TreatmentMode other) {
        mode = other;
        return this;
    }

    Records temps(double startC, double endC) {
        tempStartC = OptionalDouble.of(startC);
        tempEndC = OptionalDouble.of(endC);
        return this;
    }

    Records strengths(OptionalDouble first, OptionalDouble last) {
        strengthStart = first;
        strengthEnd = last;
        return this;
    }

    Records withoutBath() {
        bath = Optional.empty();
        return this;
    }

    Records in(String other) {
        bath = Optional.of(other);
        return this;
    }

    Records notPicked() {
        picked = false;
        return this;
    }

    Records notRinsed() {
        rinsed = false;
        return this;
    }

    Records ended(String at) {
        end = Instant.parse(at);
        return this;
    }

    Records dry(String at) {
        dryAt = Optional.of(Instant.parse(at));
        return this;
    }

    Records checkedBy(String who) {
        checker = who.isEmpty() ? Optional.empty() : Optional.of(who);
        return this;
    }

    Records letGo(String by, String reason) {
        overrideBy = by.isEmpty() ? Optional.empty() : Optional.of(by);
        overrideReason = reason.isEmpty() ? Optional.empty() : Optional.of(reason);
        return this;
    }

    CleaningRecord record() {
        return new CleaningRecord(
                id,
                kitSet,
                treatment,
                mode,
                bath,
                start,
                end,
                tempStartC,
                tempEndC,
                strengthStart,
                strengthEnd,
                picked,
                rinsed,
                dryAt,
                "thandiwe",
                checker,
                overrideBy,
                overrideReason,
                Optional.empty());
    }

    /** The troubled demo round with these records and one bath on file. */
    static Round round(BathRecord bath, Records... records) {
        return round(List.of(bath), records);
    }

    static Round round(List<BathRecord> baths, Records... records) {
        return AgreedBaths.ROUND.with(new FieldLog(
                AgreedBaths.ROUND.log().agreed(),
                baths,
                List.of(records).stream().map(Records::record).toList(),
                List.of()));
    }

    /** Judged against the agreed week. */
    static List<CleaningJudgement> judged(BathRecord bath, Records... records) {
        return judged(round(bath, records));
    }

    static List<CleaningJudgement> judged(Round round) {
        return CleaningJudge.judge(round, KitExposures.of(round, AgreedBaths.WEEK));
    }
}
