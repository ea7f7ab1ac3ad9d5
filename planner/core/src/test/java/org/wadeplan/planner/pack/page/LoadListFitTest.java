package org.wadeplan.planner.pack.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.kit.AgreedWeekKit;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;

/** The printed load list of every crew-day of both demo rounds in the agreed week: at most two pages (journey J4 of the job). */
class LoadListFitTest {

    private static final Instant MADE = Instant.parse("2027-09-05T18:00:00Z");
    private static final Round RESOLVED = DemoRound.resolved().with(AgreedWeekKit.ROUND.log());
    private static final RoundPlan RESOLVED_PLAN = AgreedWeekKit.of(RESOLVED);

    record Sheet(String name, PlanSource source, CrewDay day) {

        @Override
        public String toString() {
            return name + " " + day.crew() + " " + day.date();
        }
    }

    static Stream<Sheet> sheets() {
        return Stream.concat(
                sheets("troubled", AgreedWeekKit.ROUND, AgreedWeekKit.PLAN),
                sheets("resolved", RESOLVED, RESOLVED_PLAN));
    }

    private static Stream<Sheet> sheets(String name, Round round, RoundPlan plan) {
        PlanSource source =
                new PlanSource(round, plan, new PackClock(round.header().zone()));
        return plan.week().crewDays().stream().map(day -> new Sheet(name, source, day));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void fitsOnTwoPagesWithSerialsTickBoxesAndWeights(Sheet sheet) {
        Templates templates = new Templates();
        Section section = LoadList.section(sheet.source(), sheet.day(), templates);
        PressedPdf pdf = new PdfPress(templates).press(new Book("t", "f", MADE, "m", List.of(section)));

        assertThat(pdf.pages()).isLessThanOrEqualTo(2);
        assertThat(section.html())
                .contains("Valid to")
                .contains("class=\"tick\"")
                .contains("<b>Weight.</b> On " + sheet.day().vehicle());
    }
}
