package org.wadeplan.hazards.register;

import java.util.Locale;
import org.wadeplan.hazards.limits.PlainNumber;

/** A measured or planned number that a trigger or a stop limit may look at; the name ends in its unit. */
public enum Attribute implements Keyed {
    DEPTH_M("deepest water", "m"),
    VELOCITY_MS("fastest water", "m/s"),
    DEPTH_VELOCITY_M2S("depth x speed", "m2/s"),
    WATER_TEMP_C("water temperature", "C"),
    AIR_TEMP_C("air temperature", "C"),
    HUMIDITY_PCT("relative humidity", "%"),
    HEAT_INDEX_C("heat index", "C"),
    WET_BULB_GLOBE_C("wet-bulb globe estimate", "C"),
    WIND_CHILL_C("wind chill", "C"),
    WIND_KMH("mean wind", "km/h"),
    GUST_KMH("gusts", "km/h"),
    UV_INDEX("UV index", ""),
    RAIN_24H_MM("rain upstream in 24 h", "mm"),
    RAIN_MM_H("rain upstream", "mm/h"),
    RISE_CM_15MIN("rise in 15 minutes", "cm"),
    CONDUCTIVITY_US_CM("ambient conductivity", "uS/cm"),
    SILT_DEPTH_M("soft silt", "m"),
    BANK_HEIGHT_M("bank height", "m"),
    BANK_SLOPE_DEG("bank slope", "deg"),
    ROAD_DISTANCE_M("distance to the road", "m"),
    WALK_IN_M("walk in", "m"),
    CLIMB_M("climb on the way", "m"),
    LOAD_KG("heaviest item", "kg"),
    CREW_SIZE("people on site", ""),
    CPR_HOLDERS("people who can do CPR", ""),
    DRIVE_H("driving", "h"),
    DAY_H("travel and work", "h"),
    DRIVE_TO_CARE_MIN("drive to care", "min"),
    MAT_COVER_PCT("toxic mats on the bed", "%"),
    FENCE_CROSSINGS("fences to cross", ""),
    CATCHMENT_KM2("catchment above", "km2"),
    FLOW_LENGTH_KM("longest flow path above", "km"),
    FLOW_SLOPE("fall over length of the flow path", "m/m");

    private final String words;
    private final String unit;

    Attribute(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    @Override
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String words() {
        return words;
    }

    /** True for what can only be seen at the water on the day, so that a plan that lacks it lacks nothing. */
    public boolean seenOnSiteOnly() {
        return this == RISE_CM_15MIN;
    }

    /** {@code 0.25 m2/s} */
    public String shown(double value) {
        return (PlainNumber.of(value) + " " + unit).strip();
    }

    /** Empty for counts and indices. */
    public String unit() {
        return unit;
    }
}
