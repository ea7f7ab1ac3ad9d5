package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.pack.page.VisitPage.Arrival;

/** What is checked on arrival, in the order in which it must happen: nobody is in the water before the talk. */
final class ArrivalChecks {

    private static final String NO_VALUE = "";

    private ArrivalChecks() {}

    static List<Arrival> of(boolean electric) {
        List<Arrival> checks = new ArrayList<>();
        add(checks, "Called in; parked clear; gates and stock as told", "time");
        add(checks, "Walked the whole reach on the bank: wires, metal, pipes, people, spawning fish", NO_VALUE);
        add(checks, "Toolbox talk held, everyone signed: nobody is in the water before", "time");
        add(checks, "Water first, upstream of feet: temperature", "°C");
        add(checks, "Conductivity. Tick which: ambient [  ]  25 °C [  ]", "µS/cm");
        add(checks, "Deepest wading point", "m");
        add(checks, "Depth × speed at the fastest point", "m²/s");
        add(checks, "See to the bed; how far", "m");
        add(checks, "Method still right for these values? If not: stop, write who decided", "who");
        add(checks, "Start found; stakes in, counted and visible from the channel", "count");
        if (electric) {
            add(checks, "Gloves and switches tested; nobody barred from live work is near", NO_VALUE);
            add(checks, "Settings tested below the start; fish recover quickly", "V / Hz / ms");
        }
        return List.copyOf(checks);
    }

    private static void add(List<Arrival> checks, String check, String write) {
        checks.add(new Arrival(Integer.toString(checks.size() + 1), check, write));
    }
}
