package org.wadeplan.hazards.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.wadeplan.hazards.assess.AssessedHazard;
import org.wadeplan.hazards.assess.Assessment;
import org.wadeplan.hazards.assess.Assessor;
import org.wadeplan.hazards.assess.Conditions;
import org.wadeplan.hazards.assess.Exposure;
import org.wadeplan.hazards.assess.StopLimit;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.Condition;
import org.wadeplan.hazards.register.HazardRegister;

/** What holds for any visit, however odd. */
class BriefingPropertyTest {

    private static final HazardRegister REGISTER = HazardRegister.shipped();

    private static final List<String> FEATURES = REGISTER.hazards().stream()
            .flatMap(hazard -> hazard.trigger().anyOf().stream())
            .flatMap(List::stream)
            .filter(Condition.Feature.class::isInstance)
            .map(condition -> ((Condition.Feature) condition).feature())
            .distinct()
            .sorted()
            .toList();

    @Provide
    Arbitrary<Exposure> visits() {
        Arbitrary<Set<Activity>> activities =
                Arbitraries.of(Activity.values()).set().ofMinSize(0);
        Arbitrary<Map<Attribute, Double>> numbers = Arbitraries.maps(
                        Arbitraries.of(Attribute.values()),
                        Arbitraries.doubles().between(-20, 60))
                .ofMaxSize(20);
        Arbitrary<Map<String, Boolean>> features = Arbitraries.maps(
                        Arbitraries.of(FEATURES),
                        Arbitraries.frequencyOf(
                                Tuple.of(1, Arbitraries.just(true)), Tuple.of(4, Arbitraries.just(false))))
                .ofMaxSize(20);
        return Combinators.combine(activities, numbers, features)
                .as((doing, known, site) -> Exposure.at("X", LocalDate.of(2027, 9, 7))
                        .doing(doing.toArray(Activity[]::new))
                        .in(new Conditions(known, new TreeMap<>(site))));
    }

    @Property(tries = 300, seed = "20270907")
    void noDeadlyHazardAndNoBreachIsEverHidden(@ForAll("visits") Exposure visit) {
        Assessment assessment = Assessor.assess(visit, REGISTER);
        Briefing briefing = write(assessment);
        String spoken = String.join("\n", briefing.spoken()).toLowerCase(Locale.ROOT);
        assertThat(assessment.hazards().stream().filter(AssessedHazard::canKill))
                .allSatisfy(hazard -> assertThat(spoken).contains(hazard.title().toLowerCase(Locale.ROOT)));
        assertThat(assessment.breaches())
                .allSatisfy(breach -> assertThat(spoken).contains(breach.what().toLowerCase(Locale.ROOT)));
    }

    @Property(tries = 300, seed = "20270908")
    void aBriefingFitsOneTalkOrOnlyStopsAndTheFirstThreeAreLeft(@ForAll("visits") Exposure visit) {
        Briefing briefing = write(Assessor.assess(visit, REGISTER));
        List<String> breached = briefing.stops().stream()
                .map(StopLine::limit)
                .filter(StopLimit::breached)
                .map(StopLimit::hazardId)
                .toList();
        assertThat(briefing.fitsOneTalk()
                        || briefing.hazards().stream()
                                .skip(3)
                                .allMatch(block ->
                                        breached.contains(block.hazard().id())))
                .isTrue();
    }

    @Property(tries = 300, seed = "20270909")
    void nothingIsLostBetweenTheFrontAndTheBack(@ForAll("visits") Exposure visit) {
        Assessment assessment = Assessor.assess(visit, REGISTER);
        Briefing briefing = write(assessment);
        assertThat(briefing.hazards().size() + briefing.back().hazards().size())
                .isEqualTo(assessment.hazards().size());
        assertThat(briefing.stops().size() + briefing.back().stops().size())
                .isEqualTo(assessment.stopLimits().size());
    }

    @Property(tries = 200, seed = "20270910")
    void findingOneMoreThingOnSiteNeverTakesAHazardAway(
            @ForAll("visits") Exposure visit, @ForAll("features") String feature) {
        List<String> before = ids(visit.absent(feature));
        assertThat(ids(visit.present(feature))).containsAll(before);
    }

    @Property(tries = 200, seed = "20270911")
    void notKnowingANumberNeverTakesAwayAHazardThatCountsIt(@ForAll("visits") Exposure visit) {
        List<String> counted = List.of("W02", "W03", "W04", "W10", "C01", "C04", "T02");
        Exposure blind = visit.in(new Conditions(Map.of(), visit.conditions().features()));
        List<String> known = ids(visit).stream().filter(counted::contains).toList();
        // air and wind may bring cold water through wind chill alone; that line asks instead of counting
        assertThat(ids(blind)).containsAll(known);
    }

    @Provide
    Arbitrary<String> features() {
        return Arbitraries.of(FEATURES);
    }

    private static List<String> ids(Exposure visit) {
        return Assessor.assess(visit, REGISTER).hazards().stream()
                .map(AssessedHazard::id)
                .toList();
    }

    private static Briefing write(Assessment assessment) {
        return BriefingWriter.write(assessment, EmergencyBlock.unknown(), CrewRoles.of(Map.of()), Optional.empty());
    }
}
