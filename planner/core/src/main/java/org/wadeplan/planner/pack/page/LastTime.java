package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.effort.StartSettings;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.PastVisit;

/** What was done at the site last time, and what that means for today. */
final class LastTime {

    private final PlanSource source;
    private final SiteDay visit;
    private final Optional<PastVisit> last;
    private final Optional<StartSettings> settings;

    LastTime(PlanSource source, SiteDay visit) {
        this.source = source;
        this.visit = visit;
        this.last = source.lastVisit(visit.site().id(), visit.method());
        this.settings = source.plan().effort(visit.site().id()).flatMap(VisitEffort::settings);
    }

    List<Fact> facts() {
        if (last.isEmpty()) {
            return List.of(new Fact("Last time", "no earlier visit is on record"));
        }
        PastVisit past = last.get();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                source.clock().day(past.date()),
                past.method() + " " + past.part().word()));
        facts.add(new Fact("Time on site", Figures.known(past.onSiteMin(), "min")));
        facts.add(new Fact("Width, depth", widthAndDepth(past)));
        facts.add(new Fact("Conductivity", conductivity(past)));
        facts.add(new Fact("Water, crew", waterAndCrew(past)));
        if (visit.kind(source) == MethodKind.ELECTROFISHING) {
            facts.add(new Fact("Settings", past.settings().map(LastTime::words).orElse(Figures.UNKNOWN)));
            facts.add(new Fact("Shock time", Figures.known(past.shockS(), "s")));
        }
        past.note().ifPresent(note -> facts.add(new Fact("Note", note)));
        return facts;
    }

    private static String widthAndDepth(PastVisit past) {
        return "mean width " + Figures.known(past.widthM(), "m") + ", deepest " + Figures.known(past.maxDepthM(), "m");
    }

    private static String waterAndCrew(PastVisit past) {
        return Figures.known(past.waterTempC(), "°C") + ", " + Figures.known(past.crewSize(), "people");
    }

    private static String conductivity(PastVisit past) {
        String basis = past.conductivityBasis()
                .map(known -> known == ConductivityBasis.AMBIENT ? "ambient" : "referred to 25 °C")
                .orElse("basis not known");
        return Figures.known(past.conductivityUsCm(), "µS/cm") + " (" + basis + ")";
    }

    static String words(ElectricSettings settings) {
        return Figures.plain(settings.voltageV()) + " V, " + Figures.plain(settings.frequencyHz()) + " Hz, pulse "
                + Figures.plain(settings.pulseWidthMs()) + " ms, duty " + Figures.plain(settings.dutyPct()) + " %";
    }

    /** Blank for methods without a current. */
    String settingsLine() {
        if (visit.kind(source) != MethodKind.ELECTROFISHING) {
            return "";
        }
        return settings.map(this::settingsWords)
                .orElse("No settings are on record. Start at the lowest output and raise it only as far as fish need.");
    }

    private String settingsWords(StartSettings start) {
        String advice = start.adviceVoltageV().isPresent()
                ? "Advice, not an order: about " + start.adviceVoltageV().getAsInt() + " V in today's water ("
                        + ambient(start.todayAmbientUsCm()) + "). "
                : "";
        return advice + start.explanation();
    }

    private static String ambient(OptionalDouble conductivityUsCm) {
        return conductivityUsCm.isPresent()
                ? Figures.plain(conductivityUsCm.getAsDouble()) + " µS/cm ambient"
                : "conductivity not known";
    }

    List<String> cautions() {
        if (visit.kind(source) != MethodKind.ELECTROFISHING) {
            return List.of();
        }
        List<String> cautions = new ArrayList<>(List.of(
                "Electricity and water kill. Licensed operator, tested gear and insulated gloves, and one caller for "
                        + "\"on\" and \"off\"; current off when anyone stumbles, reaches into the water or calls stop.",
                "Start low. Test below the reach; fish must right themselves quickly. If they do not, turn down or stop. "
                        + "Your agency's code and the maker's manual go before this page."));
        settings.ifPresent(start -> cautions.addAll(start.cautions()));
        return cautions;
    }

    String comparability() {
        long before = source.visitsBefore(visit.site().id());
        if (last.isEmpty()) {
            return "No history: this visit cannot be compared with an earlier one yet.";
        }
        PastVisit past = last.get();
        if (!past.method().equals(visit.method())) {
            return "Not comparable with " + source.clock().day(past.date()) + ": that was "
                    + source.methodLabel(past.method()) + ", today is " + source.methodLabel(visit.method()) + ".";
        }
        long daysApart = Math.abs(past.date().withYear(visit.date().getYear()).toEpochDay()
                - visit.date().toEpochDay());
        return "Comparable as far as planned: same method as " + source.clock().day(past.date()) + " (" + before
                + " earlier visits), " + daysApart
                + (daysApart == 1 ? " day" : " days")
                + " apart in the year. Keep reach, settings and effort; write down any difference.";
    }
}
