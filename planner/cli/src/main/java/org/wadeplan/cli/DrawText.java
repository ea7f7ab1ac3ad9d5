package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.draw.FrameLengths;
import org.wadeplan.geo.draw.StratumRecord;
import org.wadeplan.geo.draw.StratumVisits;
import org.wadeplan.planner.draw.DrawnPlace;
import org.wadeplan.planner.draw.RoundDraw;

/** A draw as a terminal shows it. */
final class DrawText {

    private final RoundDraw draw;
    private final RemarkList remarks = new RemarkList();

    DrawText(RoundDraw draw) {
        this.draw = draw;
    }

    /** Places, then the record of the frame, strata, balance and how to repeat it; a list that may grow. */
    List<String> lines() {
        List<String> text = new ArrayList<>(places());
        text.addAll(remarks.lines());
        text.add("");
        text.addAll(frame());
        text.add("");
        text.addAll(strata());
        text.add("");
        text.addAll(TextTable.hanging("", draw.balanceMeaning()));
        draw.design().forEach(sentence -> text.addAll(TextTable.hanging("", sentence)));
        text.addAll(TextTable.hanging(
                "",
                "Repeat it with seed " + draw.request().seed() + " on the frame with print "
                        + draw.framePrint().substring(0, 16) + ", wadeplan " + draw.program() + "."));
        return text;
    }

    private List<String> places() {
        TextTable table = new TextTable(
                "place",
                "use",
                "stratum",
                "stream",
                "from_mouth_m",
                "east_m",
                "north_m",
                "chance",
                "weight_m",
                "notes");
        for (DrawnPlace place : draw.places()) {
            table.row(
                    place.code(),
                    use(place),
                    place.stratum(),
                    place.stream(),
                    number(place.fromMouthM(), 0),
                    number(place.at().eastM(), 0),
                    number(place.at().northM(), 0),
                    number(place.inclusionProbability(), 5),
                    place.weightM().isPresent() ? number(place.weightM().getAsDouble(), 0) : "-",
                    notes(place));
        }
        return table.lines();
    }

    private static String use(DrawnPlace place) {
        return place.standsInFor()
                .map(code -> "visit for " + code)
                .orElse(place.use().equals("held") ? "reserve " + place.turn() : place.use());
    }

    private String notes(DrawnPlace place) {
        List<String> notes = new ArrayList<>();
        place.lossGround()
                .ifPresent(
                        ground -> notes.add(ground + ": " + place.lossReason().orElse("")));
        place.remarks().forEach(remark -> notes.add(remarks.numberOf(remark)));
        if (!place.land().isEmpty()) {
            notes.add("land " + String.join(", ", place.land()));
        }
        return String.join("; ", notes);
    }

    private List<String> frame() {
        FrameLengths frame = draw.frame();
        List<String> lines = new ArrayList<>();
        lines.addAll(TextTable.hanging(
                "Frame: ",
                km(frame.mappedM()) + " mapped, of which "
                        + part("eligible", frame.eligibleM()) + ", "
                        + part("denied", frame.deniedM()) + ", "
                        + part("dry", frame.dryM()) + ", "
                        + part("non-target", frame.nonTargetM()) + ", "
                        + part("filtered", frame.filteredM()) + "."));
        frame.leftOut()
                .forEach(left ->
                        lines.addAll(TextTable.hanging("  left out ", km(left.lengthM()) + " " + left.reason())));
        return lines;
    }

    private String part(String name, double lengthM) {
        return name + " " + km(lengthM) + " (" + number(draw.frame().sharePct(lengthM), 1) + " %)";
    }

    private List<String> strata() {
        TextTable table = new TextTable(
                "stratum",
                "length_km",
                "base",
                "reserve",
                "weight_m",
                "balance",
                "evaluated",
                "dry or none",
                "missed",
                "visited",
                "target_km");
        for (int i = 0; i < draw.strata().size(); i++) {
            StratumRecord stratum = draw.strata().get(i);
            StratumVisits visits = draw.visits().get(i);
            table.row(
                    stratum.stratum(),
                    number(stratum.lengthM() / 1000, 2),
                    Integer.toString(stratum.size()),
                    Integer.toString(stratum.reserves()),
                    number(stratum.weightM(), 0),
                    stratum.size() > 1 ? number(stratum.balance(), 3) : "-",
                    Integer.toString(visits.evaluated()),
                    Integer.toString(visits.nonTarget()),
                    Integer.toString(visits.missed()),
                    Integer.toString(visits.visited()),
                    number(visits.targetLengthM() / 1000, 2));
        }
        return table.lines();
    }

    private static String km(double lengthM) {
        return number(lengthM / 1000, 2) + " km";
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
