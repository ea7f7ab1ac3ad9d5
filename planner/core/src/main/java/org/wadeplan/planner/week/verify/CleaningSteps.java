package org.wadeplan.planner.week.verify;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.week.DeconTask;

/**
 * Whether the steps of a cleaning do what a row of the treatments asks: in its mode, at its temperature and strength, for its
 * minutes, dried for its hours, picked first where it asks that. Written from the table alone.
 */
final class CleaningSteps {

    /** Felt without a row of its own is soaked as absorbent items are, and never shorter than this in a liquid, minutes. */
    private static final double FELT_LIQUID_MIN = 30;

    private static final double THICK_FACTOR = 3;
    private static final Pattern TEMPERATURE = Pattern.compile("(-?[0-9.]+) °C");
    private static final double TINY = 1e-9;

    private final Round round;
    private final RulesInForce rules;

    CleaningSteps(Round round) {
        this.round = round;
        this.rules = new RulesInForce(round);
    }

    /** Why a cleaning does not do what it claims; empty where a row supports the claim and its steps do the row. */
    Optional<String> lack(DeconTask task, Turnaround.Cover cover) {
        List<Treatment> rows = rows(cover, cover.material());
        boolean likeAbsorbent = rows.isEmpty() && cover.material() == Material.FELT;
        List<Treatment> supporting = likeAbsorbent ? rows(cover, Material.ABSORBENT) : rows;
        if (supporting.isEmpty()) {
            return Optional.of("a row of treatments that supports it and none that refuses it");
        }
        double leastMin = likeAbsorbent ? feltMin(cover) : 0;
        return supporting.stream().anyMatch(row -> done(task, row, leastMin))
                ? Optional.empty()
                : Optional.of("steps that last as long as its row of treatments asks, in its mode, at its strength and"
                        + " temperature, picking first where it asks that");
    }

    /** A row of grade X refuses its treatment in its mode, whatever other rows say; of one recipe the longest row counts. */
    private List<Treatment> rows(Turnaround.Cover cover, Material material) {
        List<Treatment> about = round.biosecurity().treatments().stream()
                .filter(row -> row.id().equals(cover.treatment())
                        && row.pest().equals(cover.pest())
                        && row.material() == material
                        && (row.stage().isEmpty() || row.stage().equals(cover.stage())))
                .filter(rules::counts)
                .toList();
        return about.stream()
                .filter(row -> about.stream()
                        .noneMatch(other -> other.grade() == EvidenceGrade.X && other.mode() == row.mode()))
                .filter(row -> about.stream().noneMatch(other -> sameRecipe(row, other) && asksMore(other, row)))
                .toList();
    }

    private static boolean sameRecipe(Treatment one, Treatment other) {
        return one.mode() == other.mode()
                && one.agent().equals(other.agent())
                && one.tempC().equals(other.tempC())
                && one.strength().equals(other.strength())
                && one.strengthBasis().equals(other.strengthBasis())
                && one.stage().equals(other.stage());
    }

    private static boolean asksMore(Treatment other, Treatment row) {
        return Comparator.comparingDouble(Treatment::contactMin)
                        .thenComparingDouble(Treatment::dryingH)
                        .compare(other, row)
                > 0;
    }

    private double feltMin(Turnaround.Cover cover) {
        double hardMin = rows(cover, Material.HARD).stream()
                .mapToDouble(Treatment::contactMin)
                .max()
                .orElse(0);
        return Math.max(FELT_LIQUID_MIN, THICK_FACTOR * hardMin);
    }

    private boolean done(DeconTask task, Treatment row, double leastMin) {
        boolean alone = row.mode() == TreatmentMode.DRY || row.mode() == TreatmentMode.FREEZE;
        double contactMin = alone ? row.contactMin() : Math.max(row.contactMin(), leastMin);
        double dryMin =
                row.mode() == TreatmentMode.DRY ? Math.max(row.dryingH() * 60, row.contactMin()) : row.dryingH() * 60;
        boolean inContact = row.mode() == TreatmentMode.DRY
                || task.steps().stream()
                        .anyMatch(step -> step.step().equals(word(row.mode()))
                                && step.minutes() + TINY >= contactMin
                                && reaches(step, row));
        return inContact
                && (dryMin == 0 || minutes(task, "dry") + TINY >= dryMin)
                && (!row.pickFirst() || minutes(task, "pick") > 0);
    }

    private static String word(TreatmentMode mode) {
        return switch (mode) {
            case SOAK -> "soak";
            case SPRAY -> "spray";
            case WIPE -> "wipe";
            case STEAM -> "steam";
            case FREEZE -> "freeze";
            case DRY -> "dry";
        };
    }

    private static boolean reaches(DeconStep step, Treatment row) {
        String target = step.target().orElse("");
        boolean hotEnough = row.tempC().isEmpty() || temperatureDoes(target, row);
        boolean strongEnough = row.strength().isEmpty()
                || target.startsWith(number(row.strength().getAsDouble()) + " "
                        + row.strengthBasis().orElse(""));
        return hotEnough && strongEnough;
    }

    private static boolean temperatureDoes(String target, Treatment row) {
        Matcher matcher = TEMPERATURE.matcher(target);
        if (!matcher.find()) {
            return false;
        }
        double targetC = Double.parseDouble(matcher.group(1));
        double askedC = row.tempC().getAsDouble();
        return row.mode() == TreatmentMode.FREEZE ? targetC <= askedC : targetC >= askedC;
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static int minutes(DeconTask task, String step) {
        return task.steps().stream()
                .filter(one -> one.step().equals(step))
                .mapToInt(DeconStep::minutes)
                .max()
                .orElse(0);
    }
}
