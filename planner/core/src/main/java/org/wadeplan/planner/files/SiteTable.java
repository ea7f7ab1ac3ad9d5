package org.wadeplan.planner.files;

import java.util.regex.Pattern;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.Priority;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.WetState;

/** {@code sites.csv}: the places that the round visits, with what is expected there. */
final class SiteTable {

    static final TableKind<Site> KIND = TableKind.named("sites", "site")
            .required("site name stream short_code east_m north_m priority")
            .optional("reserve_for parcel width_m wet_state depth_velocity_m2s max_depth_m "
                    + "max_depth_sd_m conductivity_us_cm conductivity_sd_us_cm clarity_m water_temp_c "
                    + "stake_bank night_access walk_in_m phone_coverage parking care care_drive_min note")
            .makes(SiteTable::site);

    private static final Words<Priority> PRIORITIES = Words.of(Priority.class);
    private static final Words<Bank> BANKS = Words.of(Bank.class);
    private static final Words<WetState> WET_STATES = Words.of(WetState.class);
    private static final Range WALK_M = Range.of(0, 100_000, "m");
    private static final Range DEPTH_VELOCITY_M2S = Range.of(0, 20, "m2/s");
    private static final Range CLARITY_M = Range.of(0, 50, "m");
    private static final Pattern SHORT_CODE = Pattern.compile("[A-Za-z0-9]{4}");

    private SiteTable() {}

    private static Site site(Row row) {
        return new Site(
                row.text("site"),
                row.text("name"),
                row.text("stream"),
                shortCode(row),
                new MetricPoint(
                        row.decimal("east_m", Range.METRES_ON_GRID), row.decimal("north_m", Range.METRES_ON_GRID)),
                row.word("priority", PRIORITIES),
                row.optionalText("reserve_for"),
                row.optionalText("parcel"),
                conditions(row),
                row.optionalFlag("night_access"),
                row.optionalDecimal("walk_in_m", WALK_M),
                row.optionalFlag("phone_coverage"),
                row.optionalText("parking"),
                row.optionalWord("stake_bank", BANKS),
                row.optionalText("care"),
                row.optionalInteger("care_drive_min", Range.MINUTES_OF_DAY),
                row.optionalText("note"));
    }

    private static Conditions conditions(Row row) {
        return new Conditions(
                row.optionalDecimal("width_m", Range.WIDTH_M),
                row.optionalWord("wet_state", WET_STATES),
                row.optionalDecimal("depth_velocity_m2s", DEPTH_VELOCITY_M2S),
                row.optionalDecimal("max_depth_m", Range.DEPTH_M),
                row.optionalDecimal("max_depth_sd_m", Range.DEPTH_M),
                row.optionalDecimal("conductivity_us_cm", Range.CONDUCTIVITY_US_CM),
                row.optionalDecimal("conductivity_sd_us_cm", Range.CONDUCTIVITY_US_CM),
                row.optionalDecimal("clarity_m", CLARITY_M),
                row.optionalDecimal("water_temp_c", Range.WATER_TEMP_C));
    }

    private static String shortCode(Row row) {
        String code = row.text("short_code");
        if (!code.isEmpty() && !SHORT_CODE.matcher(code).matches()) {
            row.refuse(
                    "short_code",
                    new Fault(
                            "short-code-form",
                            NumberCell.quoted(code) + " does not fit a handheld's waypoint name",
                            "four letters or digits without accents",
                            "shorten it to four"));
        }
        return code;
    }
}
