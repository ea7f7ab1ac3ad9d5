package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;

/** The store of the Ilvermoor scenario, section 4.6, against its reference week, section 4.8. */
class LoadPlannerTest {

    private static final KitPlan TROUBLED = plan(DemoRound.troubled());
    private static final KitPlan RESOLVED = plan(DemoRound.resolved());

    static KitPlan plan(Round round) {
        List<VisitKit> visits = VisitNeeds.of(round, ReferenceVisits.decisions(), ReferenceVisits.efforts());
        return LoadPlanner.plan(round, visits, ReferenceVisits.efforts(), ReferenceWeek.of(round));
    }

    private static List<String> shortages(KitPlan plan) {
        return plan.shortages().stream()
                .map(shortage -> String.format(
                        Locale.ROOT,
                        "%s %s %s %.1f of %.1f",
                        shortage.date().getDayOfWeek().name().substring(0, 3),
                        shortage.kind(),
                        String.join("+", shortage.crews()),
                        shortage.available(),
                        shortage.needed()))
                .toList();
    }

    private static Shortage shortage(String kind, int fromMonday) {
        return TROUBLED.shortages().stream()
                .filter(one -> one.kind().equals(kind)
                        && one.date().equals(LocalDate.of(2027, 9, 6).plusDays(fromMonday)))
                .findFirst()
                .orElseThrow();
    }

    private static LoadLine line(KitPlan plan, String crew, int fromMonday, String kind) {
        return plan.loads().stream()
                .filter(load -> load.crew().equals(crew)
                        && load.date().equals(LocalDate.of(2027, 9, 6).plusDays(fromMonday)))
                .flatMap(load -> load.lines().stream())
                .filter(line -> line.kind().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Journey J4 of the job: unit Wed, densiometer Mon to Wed, meter Mon to Fri, fyke 1, spotlight 1.
     */
    @Test
    void findsTheShortagesThatWerePlanted() {
        assertThat(shortages(TROUBLED))
                .containsExactly(
                        "MON conductivity-meter A+B 1.0 of 2.0",
                        "MON densiometer A+B 1.0 of 2.0",
                        "MON spotlight B 1.0 of 2.0",
                        "TUE conductivity-meter A+B 1.0 of 2.0",
                        "TUE densiometer A+B 1.0 of 2.0",
                        "WED backpack-unit A+B 1.0 of 2.0",
                        "WED conductivity-meter A+B 1.0 of 2.0",
                        "WED densiometer A+B 1.0 of 2.0",
                        "WED fyke B 5.0 of 6.0",
                        "WED oxidiser A 0.4 of 1.2",
                        "THU anaesthetic A 6.0 of 13.0",
                        "THU conductivity-meter A+B 1.0 of 2.0",
                        "THU oxidiser A 0.0 of 1.2",
                        "FRI anaesthetic A 0.0 of 13.0",
                        "FRI conductivity-meter A+B 1.0 of 2.0",
                        "FRI spotlight B 1.0 of 2.0");
    }

    @Test
    void findsNoneWhereTheTroublesAreResolved() {
        assertThat(RESOLVED.anythingShort()).isFalse();
    }

    /** Ilvermoor scenario 4.6 and 4.9: five baths of 1.2 kg against 4.0 kg in date; 110 mL against 90. */
    @Test
    void burnsConsumablesDownOverTheWeek() {
        assertThat(missing("oxidiser")).isCloseTo(2.0, within(1e-9));
        assertThat(missing("anaesthetic")).isCloseTo(20, within(1e-9));
        assertThat(shortage("oxidiser", 2).reason()).contains("C1-OLD expired after 2027-08-31");
    }

    private static double missing(String kind) {
        return TROUBLED.shortages().stream()
                .filter(one -> one.kind().equals(kind))
                .mapToDouble(one -> one.needed() - one.available())
                .sum();
    }

    @Test
    void saysWhatWasFoundAndThePlainestWayOut() {
        Shortage unit = shortage("backpack-unit", 2);
        assertThat(unit.reason())
                .isEqualTo("crew A and B need 2 backpack unit, 1 can go out: E1: service was last valid on 2027-09-07;"
                        + " E3 is at the depot from Wed 8 Sep 12:00, loading is at Wed 8 Sep 07:30");
        assertThat(unit.remedy())
                .isEqualTo("have the service of E1 renewed before 2027-09-08; or borrow, hire or buy 1 for crew A");
        assertThat(shortage("fyke", 2).reason())
                .contains("T2-FYKE6 is out of service (wing torn)")
                .contains("T1-FYKE belongs to T1, which is not with this crew");
        assertThat(TROUBLED.vehicles()).hasSize(1);
        assertThat(TROUBLED.vehicles().get(0).reason()).isEqualTo("V2: inspection was last valid on 2027-09-09");
        assertThat(TROUBLED.vehicles().get(0).remedy()).contains("share V1 with crew A");
    }

    /** Ilvermoor scenario 4.9, trouble 12: use P1, P2, P3 and P5, leave the weak P4. */
    @Test
    void takesTheHealthiestPacks() {
        LoadLine packs = line(TROUBLED, "A", 4, "battery-pack");
        assertThat(packs.items()).containsExactly("P1", "P2", "P3", "P5");
        assertThat(packs.label())
                .isEqualTo("battery pack (P1 98 %, P2 95 %, P3 93 %, P5 91 %: 5278 s usable, 4275 s asked with reserve;"
                        + " charge overnight: 4 chargers, 1 round)");
    }

    @Test
    void keepsACrewsThingsFromDayToDay() {
        List<String> first = line(RESOLVED, "A", 0, "backpack-unit").items();
        for (int day = 1; day <= 4; day++) {
            assertThat(line(RESOLVED, "A", day, "backpack-unit").items()).isEqualTo(first);
        }
    }

    @Test
    void takesWhatBelongsToTheKitSetThatTheWeekAssigned() {
        assertThat(line(RESOLVED, "B", 1, "wader").items()).containsExactly("K4-WADER");
        assertThat(line(RESOLVED, "B", 2, "fyke").items()).containsExactly("T2-FYKE");
        LoadLine kitSet = line(RESOLVED, "A", 0, "kit-set");
        assertThat(kitSet.items()).containsExactly("K1");
        assertThat(kitSet.label()).startsWith("kit set K1, wading: 3 wader, 3 boot");
    }

    @Test
    void printsTheEarliestEndOfACertificate() {
        assertThat(line(RESOLVED, "A", 0, "vehicle").validUntil()).hasValue(LocalDate.of(2028, 4, 30));
        assertThat(line(TROUBLED, "A", 0, "insulating-gloves").validUntil()).hasValue(LocalDate.of(2028, 2, 29));
    }

    @Test
    void keepsContainersTogether() {
        assertThat(RESOLVED.loads()).hasSize(10).allSatisfy(load -> assertThat(load.lines())
                .isSortedAccordingTo(Comparator.comparing(LoadLine::container)
                        .thenComparing(LoadLine::kind)
                        .thenComparing(LoadLine::label)));
    }
}
