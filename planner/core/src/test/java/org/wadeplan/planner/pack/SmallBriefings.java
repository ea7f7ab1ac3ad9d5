package org.wadeplan.planner.pack;

import static org.wadeplan.planner.pack.SmallRound.MONDAY;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.hazards.assess.Assessor;
import org.wadeplan.hazards.assess.Exposure;
import org.wadeplan.hazards.assess.SiteHazard;
import org.wadeplan.hazards.assess.WadingTeam;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.hazards.briefing.BriefingWriter;
import org.wadeplan.hazards.briefing.CrewRoles;
import org.wadeplan.hazards.briefing.EmergencyBlock;
import org.wadeplan.hazards.limits.WadingProfile;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.HazardRegister;

/** A briefing for the electrofishing visit of the small plan, by the shipped register. */
final class SmallBriefings {

    private SmallBriefings() {}

    static Briefing electrofishing() {
        Exposure exposure = Exposure.at("BRN-01", MONDAY)
                .doing(
                        Activity.WADING,
                        Activity.ELECTRIC_CURRENT,
                        Activity.CHEMICALS,
                        Activity.FISH_HANDLING,
                        Activity.DRIVING)
                .measured(Attribute.DEPTH_M, 0.48)
                .measured(Attribute.DEPTH_VELOCITY_M2S, 0.22)
                .measured(Attribute.WATER_TEMP_C, 15.5)
                .measured(Attribute.CONDUCTIVITY_US_CM, 96)
                .measured(Attribute.CREW_SIZE, 3)
                .measured(Attribute.AIR_TEMP_C, 17)
                .absent("thunder-forecast")
                .waded(WadingTeam.of(WadingProfile.STANDARD))
                .noted(SiteHazard.of("E04", "old fence wire and roof iron lie in the bed")
                        .inSubReach("D"));
        EmergencyBlock emergency = new EmergencyBlock(
                List.of("46.13835 N, 20.95922 W (WGS 84)", "46° 08.301′ N, 020° 57.553′ W (WGS 84)"),
                Optional.of("lay-by south of the bridge, 250 m on foot"),
                Optional.of("Ilver Cross hospital, 35 min by road"),
                Optional.empty(),
                Optional.of("112"),
                Optional.of(LocalTime.of(14, 30)),
                Optional.of(LocalTime.of(15, 15)),
                Optional.of("The office calls 112 and gives the position."));
        return BriefingWriter.write(
                Assessor.assess(exposure, HazardRegister.shipped()),
                emergency,
                CrewRoles.of(Map.of("leader", "Imre", "operator", "Imre", "netter", "Yusra", "driver", "Yusra")),
                Optional.empty());
    }
}
