package org.wadeplan.hazards.assess;

import java.time.LocalDate;
import org.wadeplan.hazards.limits.WadingProfile;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;

/** Visits of the invented Ilvermoor round, for tests. */
public final class ExampleVisits {

    private ExampleVisits() {}

    /** Electric current by day over old fence wire and roof iron. */
    public static Exposure tollowOldIron() {
        return weather(Exposure.at("TOL-01", LocalDate.of(2027, 9, 7))
                        .doing(
                                Activity.WADING,
                                Activity.ELECTRIC_CURRENT,
                                Activity.CHEMICALS,
                                Activity.FISH_HANDLING,
                                Activity.DRIVING))
                .measured(Attribute.DEPTH_M, 0.52)
                .measured(Attribute.DEPTH_VELOCITY_M2S, 0.25)
                .measured(Attribute.WATER_TEMP_C, 18.5)
                .measured(Attribute.CONDUCTIVITY_US_CM, 188)
                .measured(Attribute.CREW_SIZE, 3)
                .measured(Attribute.CPR_HOLDERS, 3)
                .measured(Attribute.DRIVE_H, 1.5)
                .measured(Attribute.DAY_H, 9.3)
                .waded(WadingTeam.of(WadingProfile.STANDARD))
                .noted(SiteHazard.of("E04", "old fence wire and roof iron lie in the bed")
                        .inSubReach("D"));
    }

    /** Nets left overnight, far from a road, with no phone: no current. */
    public static Exposure brannetNets() {
        return weather(Exposure.at("BRN-03", LocalDate.of(2027, 9, 6))
                        .doing(Activity.WADING, Activity.NETS, Activity.REMOTE, Activity.FISH_HANDLING))
                .measured(Attribute.DEPTH_M, 0.35)
                .measured(Attribute.DEPTH_VELOCITY_M2S, 0.12)
                .measured(Attribute.WATER_TEMP_C, 13.5)
                .measured(Attribute.WALK_IN_M, 2100)
                .present("no-phone");
    }

    private static Exposure weather(Exposure exposure) {
        return exposure.measured(Attribute.AIR_TEMP_C, 17)
                .measured(Attribute.HUMIDITY_PCT, 70)
                .measured(Attribute.WIND_KMH, 12)
                .measured(Attribute.RAIN_24H_MM, 2)
                .absent("thunder-forecast");
    }
}
