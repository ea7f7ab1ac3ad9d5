package org.wadeplan.hazards.assess;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.hazards.limits.RiseTime;
import org.wadeplan.hazards.limits.RiseWarning;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.Condition;
import org.wadeplan.hazards.register.Control;
import org.wadeplan.hazards.register.ControlLevel;
import org.wadeplan.hazards.register.Hazard;
import org.wadeplan.hazards.register.HazardRegister;
import org.wadeplan.hazards.register.Sign;

/** Works out what can hurt people on one visit. */
public final class Assessor {

    /** Nobody has rated it: the worst that is plausible for something seen on the spot. */
    private static final RiskScore UNRATED = new RiskScore(4, 5);

    private final Exposure exposure;
    private final HazardRegister register;
    private final TriggerCheck triggers;
    private final List<AssessedHazard> found = new ArrayList<>();
    private final List<Hazard> applying = new ArrayList<>();
    private final Set<String> open = new TreeSet<>();
    private final List<SetAside> setAside = new ArrayList<>();

    private Assessor(Exposure exposure, HazardRegister register) {
        this.exposure = withNotedFeatures(exposure, register);
        this.register = register;
        this.triggers = new TriggerCheck(this.exposure);
    }

    /** The ranked hazards of the visit and its stop limits. The same inputs give the same order on every machine. */
    public static Assessment assess(Exposure exposure, HazardRegister register) {
        return new Assessor(exposure, register).assess();
    }

    private Assessment assess() {
        register.hazards().forEach(this::consider);
        considerUnlisted();
        found.sort(AssessedHazard.FIRST_TO_SAY);
        List<Hazard> ranked = found.stream()
                .flatMap(hazard -> applying.stream().filter(row -> row.id().equals(hazard.id())))
                .toList();
        return new Assessment(
                exposure.site(),
                exposure.date(),
                register.version(),
                found,
                new StopLimits(exposure).of(ranked),
                rise(),
                List.copyOf(open),
                setAside);
    }

    private Optional<RiseWarning> rise() {
        if (!exposure.activities().contains(Activity.WADING)) {
            return Optional.empty();
        }
        Conditions known = exposure.conditions();
        return Optional.of(RiseTime.earliestCredible(new RiseTime.Catchment(
                known.given(Attribute.FLOW_LENGTH_KM),
                known.given(Attribute.CATCHMENT_KM2),
                known.given(Attribute.FLOW_SLOPE))));
    }

    private void consider(Hazard hazard) {
        List<SiteHazard> seen = seen(hazard.id());
        Finding finding = triggers.check(hazard.trigger());
        if (seen.isEmpty() && finding instanceof Finding.Open asks) {
            open.addAll(asks.open());
        }
        boolean applies = finding instanceof Finding.Applies || !seen.isEmpty();
        if (!applies) {
            return;
        }
        if (triggers.activitiesMissing(hazard.trigger())) {
            seen.forEach(note -> setAside.add(new SetAside(
                    hazard.id(),
                    hazard.title() + ": noted here (" + note.sentence() + "), but nobody does that on this visit")));
        } else if (inPlace(hazard.id()).contains(ControlLevel.ELIMINATE)) {
            setAside.add(new SetAside(hazard.id(), hazard.title() + ": said to be eliminated"));
        } else {
            applying.add(hazard);
            found.add(assessed(hazard, seen, why(finding, seen)));
        }
    }

    private AssessedHazard assessed(Hazard hazard, List<SiteHazard> seen, List<String> why) {
        List<Control> controls = new ArrayList<>(hazard.controls());
        seen.forEach(note -> controls.addAll(note.controls()));
        List<String> reasons = new ArrayList<>(why);
        RiskScore inherent = inherent(hazard, seen, reasons);
        Set<ControlLevel> inPlace = inPlace(hazard.id());
        return new AssessedHazard(
                hazard.id(),
                hazard.title(),
                inherent,
                Credit.residual(inherent, controls, inPlace),
                Credit.ifDone(inherent, controls),
                controls,
                reasons,
                seen,
                hazard.askOnSite(),
                hazard.sign(),
                Credit.leansOnPeople(controls, inPlace),
                false,
                hazard.source());
    }

    /**
     * The likelihood a person gave, else the register's and one step up where seen here; one more for each raising
     * condition. No person's rating makes the consequence smaller than the register's.
     */
    private RiskScore inherent(Hazard hazard, List<SiteHazard> seen, List<String> reasons) {
        RiskScore listed = new RiskScore(hazard.likelihood(), hazard.consequence());
        RiskScore start = worstRating(seen)
                .map(given -> new RiskScore(given.likelihood(), Math.max(given.consequence(), listed.consequence())))
                .orElseGet(() -> listed.likelier(seen.isEmpty() ? 0 : 1));
        int raised = 0;
        for (Condition condition : hazard.raisedBy()) {
            if (triggers.check(condition) instanceof Finding.Applies applies) {
                raised++;
                applies.why().forEach(reason -> reasons.add("likelier here: " + reason));
            }
        }
        return start.likelier(raised);
    }

    private void considerUnlisted() {
        int number = 0;
        for (SiteHazard note : exposure.noted()) {
            if (note.hazardId().flatMap(register::hazard).isEmpty()) {
                number++;
                found.add(unlisted("N" + (number < 10 ? "0" : "") + number, note));
            }
        }
    }

    private AssessedHazard unlisted(String id, SiteHazard note) {
        List<String> why = new ArrayList<>(List.of("seen at this site"));
        note.hazardId().ifPresent(row -> why.add("the register has no row " + row));
        if (note.rating().isEmpty()) {
            why.add("not rated by anyone: the worst plausible counts");
        }
        RiskScore inherent = note.rating().orElse(UNRATED);
        Set<ControlLevel> inPlace = inPlace(id);
        return new AssessedHazard(
                id,
                note.text(),
                inherent,
                Credit.residual(inherent, note.controls(), inPlace),
                Credit.ifDone(inherent, note.controls()),
                note.controls(),
                why,
                List.of(note),
                Optional.empty(),
                new Sign(Optional.of("W001"), "general warning"),
                Credit.leansOnPeople(note.controls(), inPlace),
                note.rating().isEmpty(),
                "people who were at this site");
    }

    private static List<String> why(Finding finding, List<SiteHazard> seen) {
        List<String> why = new ArrayList<>();
        seen.forEach(note -> why.add("seen at this site: " + note.sentence()));
        if (finding instanceof Finding.Applies applies) {
            why.addAll(applies.why());
        }
        return why;
    }

    private static Optional<RiskScore> worstRating(List<SiteHazard> seen) {
        return seen.stream()
                .flatMap(note -> note.rating().stream())
                .max((a, b) -> a.log10() == b.log10() ? a.consequence() - b.consequence() : a.log10() - b.log10());
    }

    private List<SiteHazard> seen(String hazardId) {
        return exposure.noted().stream()
                .filter(note -> note.hazardId().filter(hazardId::equals).isPresent())
                .toList();
    }

    private Set<ControlLevel> inPlace(String hazardId) {
        Set<ControlLevel> levels = EnumSet.noneOf(ControlLevel.class);
        exposure.controlsInPlace().stream()
                .filter(control -> control.hazardId().equals(hazardId))
                .forEach(control -> levels.add(control.level()));
        return levels;
    }

    /** Whoever noted a hazard also reported what its row looks for, so that other rows can see it. */
    private static Exposure withNotedFeatures(Exposure exposure, HazardRegister register) {
        Conditions conditions = exposure.conditions();
        for (SiteHazard note : exposure.noted()) {
            List<List<Condition>> lines = note.hazardId()
                    .flatMap(register::hazard)
                    .map(hazard -> hazard.trigger().anyOf())
                    .orElse(List.of());
            for (Condition condition : lines.stream().flatMap(List::stream).toList()) {
                if (condition instanceof Condition.Feature feature
                        && conditions.feature(feature.feature()).isEmpty()) {
                    conditions = conditions.with(feature.feature(), true);
                }
            }
        }
        return exposure.in(conditions);
    }
}
