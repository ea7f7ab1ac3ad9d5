package org.wadeplan.planner.decon;

import java.util.Locale;
import java.util.Optional;

/**
 * The arithmetic of making a bath up. Formulae: US CDC, chlorine disinfectant preparation (parts of water, grams per litre);
 * WHO 2014, annex G (5 % is 50 000 mg/L). Every argument must be positive.
 */
public final class Dilution {

    private static final double MG_PER_L_PER_PERCENT = 10_000;
    /** Mass of chlorine per mass of sodium hypochlorite, as available chlorine: 70.9 / 74.4. */
    private static final double CHLORINE_PER_HYPOCHLORITE = 70.9 / 74.4;
    /** A bleach under this strength makes the label's "per cent of product" too weak (own limit). */
    private static final double WEAK_STOCK_PCT = 4;

    private Dilution() {}

    /** Parts of water to one part of stock. */
    public static double waterPartsPerStockPart(double stockPct, double targetPct) {
        positive(stockPct, "stockPct");
        positive(targetPct, "targetPct");
        if (targetPct > stockPct) {
            throw new IllegalArgumentException("a stock of " + stockPct + " % cannot make " + targetPct + " %");
        }
        return stockPct / targetPct - 1;
    }

    /** Grams of powder to one litre, where the powder holds {@code powderPct} per cent of the active agent. */
    public static double powderGPerL(double powderPct, double targetPct) {
        return positive(targetPct, "targetPct") / positive(powderPct, "powderPct") * 1000;
    }

    /** Millilitres of stock for a bath of a final volume. */
    public static double stockMl(double finalVolumeL, double targetMgL, double stockPct) {
        return positive(finalVolumeL, "finalVolumeL")
                * positive(targetMgL, "targetMgL")
                / (positive(stockPct, "stockPct") * MG_PER_L_PER_PERCENT)
                * 1000;
    }

    /** Strength, mg/L, of a bath made up to a final volume with some stock. */
    public static double strengthMgL(double stockPct, double stockMl, double finalVolumeL) {
        return positive(stockPct, "stockPct")
                * MG_PER_L_PER_PERCENT
                * positive(stockMl, "stockMl")
                / (positive(finalVolumeL, "finalVolumeL") * 1000);
    }

    /** Available chlorine, mg/L, of a hypochlorite solution given by weight; density in kg/L. */
    public static double availableChlorineMgL(double hypochloritePct, double densityKgL) {
        return positive(hypochloritePct, "hypochloritePct")
                * positive(densityKgL, "densityKgL")
                * MG_PER_L_PER_PERCENT
                * CHLORINE_PER_HYPOCHLORITE;
    }

    /** Millilitres of product, where a label asks for a per cent of the product itself. */
    public static double productMl(double finalVolumeL, double productPct) {
        return positive(finalVolumeL, "finalVolumeL") * positive(productPct, "productPct") / 100 * 1000;
    }

    /** Kilograms of powder for a bath of a strength in grams of product per litre. */
    public static double powderKg(double volumeL, double strengthGL) {
        return positive(volumeL, "volumeL") * positive(strengthGL, "strengthGL") / 1000;
    }

    /**
     * What "so many per cent of the product" means for the bottle at hand: the strength it gives, and a warning where the
     * bottle is weak. Where the bottle's strength is not known, the range that bottles on sale give.
     */
    public static String productPercentCaution(double productPct, Optional<Double> stockPct) {
        String asked = Words.number(positive(productPct, "productPct")) + " % of the product";
        if (stockPct.isEmpty()) {
            return String.format(
                    Locale.ROOT,
                    "%s is %.0f to %.0f mg/L available chlorine as the bottle goes from 2 to 6 %%: read the bottle.",
                    asked,
                    productPct * 200,
                    productPct * 600);
        }
        double stock = positive(stockPct.get(), "stockPct");
        String given = String.format(
                Locale.ROOT,
                "%s at %s %% is %.0f mg/L available chlorine.",
                asked,
                Words.number(stock),
                productPct * stock * 100);
        return stock < WEAK_STOCK_PCT
                ? given + " The bottle is under 4 %: weaker than the label's rule assumes."
                : given;
    }

    private static double positive(double value, String name) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be above 0: " + value);
        }
        return value;
    }
}
