package org.wadeplan.desktop.week;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Placement;

/** The timeline from a plan. */
final class WeekBuilder {

    private static final int EARLIEST_MIN = 5 * 60;
    private static final int LATEST_MIN = 24 * 60;

    private final Round round;
    private final RoundPlan plan;
    private final List<DaySky> skies;
    private final ZoneId zone;

    private WeekBuilder(Round round, RoundPlan plan, List<DaySky> skies) {
        this.round = round;
        this.plan = plan;
        this.skies = skies;
        this.zone = round.header().zone();
    }

    static WeekPicture picture(Round round, RoundPlan plan, List<DaySky> skies) {
        return new WeekBuilder(round, plan, skies).build();
    }

    private WeekPicture build() {
        int from = EARLIEST_MIN;
        int to = LATEST_MIN;
        for (CrewDay day : plan.week().crewDays()) {
            DayClock clock = new DayClock(day.date(), zone);
            from = Math.min(from, clock.minutes(day.start()) / 60 * 60);
            to = Math.max(to, (clock.minutes(day.end()) + 59) / 60 * 60);
        }
        KitLanes kit = new KitLanes(plan.week(), zone);
        List<DayBand> days = new ArrayList<>();
        for (LocalDate date : dates()) {
            days.add(band(date, from, to, kit));
        }
        return new WeekPicture(from, to, List.copyOf(days));
    }

    private List<LocalDate> dates() {
        return plan.week().crewDays().stream()
                .map(CrewDay::date)
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .toList();
    }

    private DayBand band(LocalDate date, int from, int to, KitLanes kit) {
        List<Lane> lanes = new ArrayList<>();
        boolean tidal = false;
        for (CrewDay day : plan.week().crewDays()) {
            if (day.date().equals(date)) {
                lanes.add(lane(day));
                tidal |= day.visits().stream().anyMatch(this::tidal);
            }
        }
        lanes.addAll(kit.of(date, from, to));
        DaySky sky =
                skies.stream().filter(of -> of.date().equals(date)).findFirst().orElseGet(() -> DaySky.unknown(date));
        DayBackground background = new DayBackground(sky, new DayClock(date, zone), to, tidal);
        return new DayBand(date, Times.day(date), background.words(), background.shades(), List.copyOf(lanes));
    }

    private boolean tidal(Activity visit) {
        return visit.site()
                .flatMap(round::site)
                .flatMap(round::waterOf)
                .filter(water -> water.tidal())
                .isPresent();
    }

    private Lane lane(CrewDay day) {
        DayClock clock = new DayClock(day.date(), zone);
        List<WeekBar> bars = day.activities().stream()
                .map(activity -> bar(day, activity, clock))
                .toList();
        return new Lane(Words.of("week.crewLane", day.crew()), false, bars);
    }

    private WeekBar bar(CrewDay day, Activity activity, DayClock clock) {
        Optional<String> site = activity.site().or(() -> round.site(activity.place())
                .map(at -> at.id())
                .filter(at -> activity.kind() == ActivityKind.TRAVEL));
        return new WeekBar(
                BarId.of(day, activity),
                BarKind.of(activity.kind()),
                clock.minutes(activity.start()),
                clock.minutes(activity.end()),
                activity.p50End().map(end -> OptionalInt.of(clock.minutes(end))).orElse(OptionalInt.empty()),
                placement(plan, activity)
                        .map(placed -> OptionalInt.of(placed.slackMin()))
                        .orElse(OptionalInt.empty()),
                label(activity),
                spoken(day, activity),
                site);
    }

    static Optional<Placement> placement(RoundPlan plan, Activity activity) {
        return plan.week().placements().stream()
                .filter(placed -> activity.site().filter(placed.site()::equals).isPresent()
                        && activity.part().filter(part -> part == placed.part()).isPresent())
                .findFirst();
    }

    /** The site first, because that is what people look for; what else it is when there is room. */
    private static String label(Activity activity) {
        return switch (activity.kind()) {
            case VISIT ->
                activity.place()
                        + activity.part().map(part -> " " + part.word()).orElse("");
            case TRAVEL -> "→ " + activity.place();
            default -> BarKind.of(activity.kind()).words();
        };
    }

    private String spoken(CrewDay day, Activity activity) {
        return Words.of(
                "week.barSpoken",
                day.crew(),
                Times.day(day.date()),
                what(activity),
                Times.clock(activity.start(), zone),
                Times.clock(activity.end(), zone),
                Times.minutes(activity.minutes()));
    }

    static String what(Activity activity) {
        return switch (activity.kind()) {
            case VISIT ->
                activity.part().map(part -> Words.of("part." + part.word())).orElse(BarKind.VISIT.words()) + " "
                        + activity.place();
            case TRAVEL -> Words.of("week.travelTo", activity.place());
            default -> BarKind.of(activity.kind()).words();
        };
    }
}
