package org.wadeplan.planner.decon.bench;

import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.decon.ChoiceFigures;

/** Decontamination against its goals. Ends with 1 where one is missed. Made cases are seeded, so every run sees the same. */
public final class DeconBench {

    private static final List<DeconFigures> ALL = List.of(new ChoiceFigures(), new FindFigures());

    private DeconBench() {}

    /** Prints the table of figures. */
    public static void main(String[] args) {
        print("figure", "goal", "ours", "peer", "ratio", "holds");
        boolean fallsShort = false;
        for (DeconFigures figures : ALL) {
            for (DeconFigure row : figures.measured()) {
                fallsShort |= !row.holds();
                print(row.figure(), row.goal(), row.ours(), row.peer(), row.ratio(), row.holds() ? "yes" : "NO");
            }
        }
        System.exit(fallsShort ? 1 : 0);
    }

    private static void print(String... parts) {
        System.out.print(String.format(Locale.ROOT, "%-58s %-10s %12s %12s %8s  %s%n", (Object[]) parts));
    }
}
