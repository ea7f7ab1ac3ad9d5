package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.WetState;

/** The conditions of a site that a method table may look at, by the names of the columns in {@code sites.csv}. */
public enum SiteInput {
    WET_STATE("wet_state", "wet state", "", ValueType.TEXT),
    DEPTH_VELOCITY("depth_velocity_m2s", "depth times speed", "m²/s", ValueType.NUMBER),
    MAX_DEPTH("max_depth_m", "deepest point", "m", ValueType.NUMBER),
    CONDUCTIVITY("conductivity_us_cm", "ambient conductivity", "µS/cm", ValueType.NUMBER),
    CLARITY("clarity_m", "clarity", "m", ValueType.NUMBER),
    WATER_TEMP("water_temp_c", "water temperature", "°C", ValueType.NUMBER),
    NIGHT_ACCESS("night_access", "night access", "", ValueType.TRUTH);

    /** Below any water that flows; only keeps the search among unknown values finite. */
    private static final BigDecimal COLDEST_C = BigDecimal.valueOf(-5);

    private final String column;
    private final String words;
    private final String unit;
    private final ValueType type;

    SiteInput(String column, String words, String unit, ValueType type) {
        this.column = column;
        this.words = words;
        this.unit = unit;
        this.type = type;
    }

    /** The name as tables write it. */
    public String column() {
        return column;
    }

    /** As people say it. */
    public String words() {
        return words;
    }

    /** Blank where it has none. */
    public String unit() {
        return unit;
    }

    public ValueType type() {
        return type;
    }

    public static Optional<SiteInput> named(String column) {
        return Arrays.stream(values())
                .filter(input -> input.column.equals(column))
                .findFirst();
    }

    /** Every name, for messages. */
    public static String allNames() {
        return Arrays.stream(values()).map(SiteInput::column).collect(Collectors.joining(", "));
    }

    /** The values that nature allows: what is not known may be any of these. */
    public UnaryTest possible() {
        return switch (type) {
            case TEXT -> new UnaryTest.Texts(new TreeSet<>(wetStates()), false);
            case TRUTH -> new UnaryTest.Truths(true, true);
            case NUMBER ->
                new UnaryTest.Numbers(NumberSet.of(Interval.atLeast(this == WATER_TEMP ? COLDEST_C : BigDecimal.ZERO)));
        };
    }

    /** The value of this input; empty where it is not known. */
    Optional<CaseValue> value(Conditions conditions, Optional<Boolean> nightAccess) {
        return switch (this) {
            case WET_STATE -> conditions.wetState().map(state -> CaseValue.of(word(state)));
            case DEPTH_VELOCITY -> number(conditions.depthVelocityM2S());
            case MAX_DEPTH -> number(conditions.maxDepthM());
            case CONDUCTIVITY -> number(conditions.conductivityUsCm());
            case CLARITY -> number(conditions.clarityM());
            case WATER_TEMP -> number(conditions.waterTempC());
            case NIGHT_ACCESS -> nightAccess.map(CaseValue::of);
        };
    }

    /** The standard uncertainty that is stated with the value, in its unit; empty where none is. */
    public OptionalDouble standardUncertainty(Conditions conditions) {
        return switch (this) {
            case MAX_DEPTH -> conditions.maxDepthSdM();
            case CONDUCTIVITY -> conditions.conductivitySdUsCm();
            default -> OptionalDouble.empty();
        };
    }

    private static Optional<CaseValue> number(OptionalDouble value) {
        return value.isPresent() ? Optional.of(CaseValue.of(value.getAsDouble())) : Optional.empty();
    }

    private static List<String> wetStates() {
        return Arrays.stream(WetState.values()).map(SiteInput::word).toList();
    }

    private static String word(WetState state) {
        return state.name().toLowerCase(Locale.ROOT);
    }
}
