package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class AttributeFilterTest {

    private static final SourcePlace PLACE = SourcePlace.part("round.json", "filters.streams");
    private static final LayerShape LAYER = new LayerShape(
            "rivers",
            Optional.empty(),
            LayerShape.Kind.LINESTRING,
            List.of(
                    Field.text("FTYPE"),
                    Field.whole("StreamOrde"),
                    Field.decimal("depth"),
                    Field.text("FCODE"),
                    Field.flag("wet"),
                    Field.text("GNIS_NAME")));

    private static final Feature STREAM =
            feature("FTYPE", "StreamRiver", "StreamOrde", 3L, "FCODE", "46006", "wet", true);

    private static Feature feature(Object... namesAndValues) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            Object value = namesAndValues[i + 1];
            Attribute attribute = value instanceof String text
                    ? Attribute.of(text)
                    : value instanceof Boolean flag ? Attribute.of(flag.booleanValue()) : number(value);
            attributes.put(String.valueOf(namesAndValues[i]), attribute);
        }
        return new Feature("1", Optional.empty(), attributes);
    }

    private static Attribute number(Object value) {
        return value instanceof Long whole
                ? Attribute.of(whole.longValue())
                : Attribute.of(((Number) value).doubleValue());
    }

    private static Truth about(String filter, Feature feature) {
        return AttributeFilter.parse(filter, LAYER, PLACE).value().orElseThrow().about(feature);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "FTYPE = 'StreamRiver' AND StreamOrde >= 2 | TRUE",
                "ftype = 'StreamRiver' AND STREAMORDE >= 4 | FALSE",
                "FTYPE = 'streamriver' | FALSE",
                "FTYPE <> 'Pipeline' | TRUE",
                "FCODE = 46006 | TRUE",
                "FCODE = '46006' | TRUE",
                "FCODE > 46005.5 | TRUE",
                "FTYPE > 3 | UNKNOWN",
                "StreamOrde IN (1, 2, 3) | TRUE",
                "StreamOrde NOT IN (1, 2, 3) | FALSE",
                "FTYPE IN ('Pipeline', 'StreamRiver') | TRUE",
                "StreamOrde BETWEEN 2 AND 3 | TRUE",
                "StreamOrde NOT BETWEEN 2 AND 3 | FALSE",
                "FTYPE LIKE 'Stream%' | TRUE",
                "FTYPE LIKE 'stream%' | FALSE",
                "FTYPE ILIKE 'stream%' | TRUE",
                "FTYPE LIKE 'Stream_iver' | TRUE",
                "FTYPE LIKE 'Stream.iver' | FALSE",
                "wet = true | TRUE",
                "wet = false | FALSE",
                "wet = 1 | TRUE",
                "2 * StreamOrde + 1 > 6 | TRUE",
                "3 = StreamOrde | TRUE",
                "INCLUDE | TRUE",
                "EXCLUDE | FALSE",
                "StreamOrde > -9 | TRUE"
            })
    void comparesAsWritten(String filter, Truth expected) {
        assertThat(about(filter, STREAM)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "depth < 100",
                "NOT (depth < 100)",
                "depth <> 3",
                "depth = 3",
                "NOT depth IN (1, 2)",
                "depth BETWEEN 1 AND 2",
                "GNIS_NAME LIKE '%'",
                "GNIS_NAME NOT LIKE 'B%'",
                "depth + 1 > 0",
                "StreamOrde / 0 > 1",
                "depth < 1 OR StreamOrde = 4",
                "depth < 1 AND StreamOrde = 3"
            })
    void isNeverTrueOfAValueThatIsNotKnown(String filter) {
        assertThat(about(filter, STREAM)).isEqualTo(Truth.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "depth < 1 OR StreamOrde = 3 | TRUE",
                "depth < 1 AND StreamOrde = 4 | FALSE",
                "NOT (depth < 1 AND StreamOrde = 4) | TRUE",
                "depth IS NULL | TRUE",
                "depth IS NOT NULL | FALSE",
                "FTYPE IS NULL | FALSE"
            })
    void isCertainWhereTheUnknownDoesNotMatter(String filter, Truth expected) {
        assertThat(about(filter, STREAM)).isEqualTo(expected);
    }

    @Test
    void aBlankTextIsNotKnown() {
        Feature blank = feature("GNIS_NAME", "  ", "FTYPE", "x");

        assertThat(about("GNIS_NAME = ''", blank)).isEqualTo(Truth.UNKNOWN);
        assertThat(about("GNIS_NAME IS NULL", blank)).isEqualTo(Truth.TRUE);
    }

    @ParameterizedTest
    @EnumSource(Truth.class)
    void theLogicIsThatOfSql(Truth truth) {
        // Source: ISO/IEC 9075-2 (SQL foundation), 8.8, tables of AND, OR, NOT and IS; from memory.
        assertThat(truth.and(Truth.TRUE)).isEqualTo(truth);
        assertThat(truth.and(Truth.FALSE)).isEqualTo(Truth.FALSE);
        assertThat(truth.or(Truth.FALSE)).isEqualTo(truth);
        assertThat(truth.or(Truth.TRUE)).isEqualTo(Truth.TRUE);
        assertThat(truth.not().not()).isEqualTo(truth);
        assertThat(Truth.UNKNOWN.not()).isEqualTo(Truth.UNKNOWN);
    }

    private static List<String> refusals(String filter) {
        Checked<AttributeFilter> answer = AttributeFilter.parse(filter, LAYER, PLACE);
        assertThat(answer.value()).isEmpty();
        return answer.problems().stream().map(Problem::sentence).toList();
    }

    @Test
    void refusesUnknownColumnsByNameWithThoseThatThereAre() {
        assertThat(refusals("StreamOrder >= 2 OR NOT (Colour = 'red')"))
                .containsExactly(
                        "round.json, filters.streams: the filter asks for \"Colour\", and the layer rivers has no such"
                                + " column. Allowed: one of its columns FTYPE, StreamOrde, depth, FCODE, wet, GNIS_NAME."
                                + " Do: correct the name",
                        "round.json, filters.streams: the filter asks for \"StreamOrder\", and the layer rivers has no such"
                                + " column. Allowed: one of its columns FTYPE, StreamOrde, depth, FCODE, wet, GNIS_NAME."
                                + " Do: write StreamOrde if that is meant");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "INTERSECTS(geom, POINT(1 2)) | INTERSECTS",
                "BBOX(geom, 1, 2, 3, 4) | BBOX",
                "DWITHIN(geom, POINT(1 2), 5, meters) | DWITHIN",
                "strLength(FTYPE) > 3 | the function strLength",
                "area(geom) > 3 | the function Area",
                "FTYPE EXISTS | the function PropertyExists",
                "FTYPE AFTER 2020-01-01T00:00:00Z | AFTER",
                "FTYPE > 2020-01-01T00:00:00Z | a date",
                "IN ('rivers.1') | a list of feature ids"
            })
    void refusesByNameWhatIsNotAboutAttributes(String filter, String what) {
        assertThat(refusals(filter))
                .containsExactly("round.json, filters.streams: the filter uses " + what + ", which is not done here."
                        + " Allowed: columns compared with numbers or texts (=, <>, <, <=, >, >=, BETWEEN, IN, LIKE,"
                        + " ILIKE, IS NULL), joined by AND, OR and NOT. Do: say it with such comparisons; dates are texts"
                        + " here: seen >= '2027-09-06'");
    }

    @Test
    void saysWhereItStopsBeingAFilter() {
        assertThat(refusals("StreamOrde >= 2 AND"))
                .containsExactly(
                        "round.json, filters.streams: the filter \"StreamOrde >= 2 AND\" is not understood from"
                                + " character 19 on. Allowed: a condition in ECQL, such as FTYPE = 'StreamRiver' AND StreamOrde >="
                                + " 2. Do: put texts in single quotes, and column names with other letters than a to z in double"
                                + " quotes");
        assertThat(refusals("")).singleElement().asString().contains("is not understood from character 1 on");
        assertThat(refusals("(".repeat(2000) + "wet = true"))
                .singleElement()
                .asString()
                .contains("is not understood");
    }
}
