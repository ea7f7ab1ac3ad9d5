package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** One fault in {@code round.json} in a copy of the demo round gives exactly the sentences that a person needs. */
class BrokenHeaderTest {

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(group1(), group2(), group3(), group4(), group5()).flatMap(group -> group);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }

    private static Stream<Case> group1() {
        return Stream.of(
                new Case(
                        round -> round.with("round.json", "\"seed\": 20270906,", ""),
                        "ERROR json-key-missing round.json, seed: this key is missing. Allowed: a whole number. Do: add it"),
                new Case(
                        round -> round.with("round.json", "\"seed\": 20270906", "\"seed\": \"often\""),
                        "ERROR json-type round.json, seed: the value is a text, \"often\". Allowed: a whole number. Do: mend it"),
                new Case(
                        round -> round.with("round.json", "\"seed\": 20270906", "\"seed\": 1.5"),
                        "ERROR json-type round.json, seed: the value is a number, 1.5. Allowed: a whole number. Do: mend it"),
                new Case(
                        round -> round.with("round.json", "\"maxShiftMin\": 660", "\"maxShiftMin\": \"660\""),
                        "ERROR json-type round.json, duty.maxShiftMin: the value is a text, \"660\". Allowed: a whole number from 0 to 1440 minutes. Do: mend it"),
                new Case(
                        round -> round.with("round.json", "\"maxShiftMin\": 660", "\"maxShiftMinutes\": 660"),
                        "ERROR json-key-missing round.json, duty.maxShiftMin: this key is missing. Allowed: a whole number from 0 to 1440 minutes. Do: add it",
                        "NOTE json-key-unknown round.json, duty.maxShiftMinutes: this key is not known here and not read. Do: if maxShiftMin is meant, rename it"),
                new Case(
                        round -> round.with("round.json", "\"maxShiftMin\": 660", "\"maxShiftMin\": 6600"),
                        "ERROR out-of-range round.json, duty.maxShiftMin: \"6600\" is too high. Allowed: a whole number from 0 to 1440 minutes. Do: check the value and its unit"));
    }

    private static Stream<Case> group2() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "round.json",
                                "\"stakeUncertaintyM\": 5,",
                                "\"stakeUncertaintyM\": 5, \"weather\": \"fine\","),
                        "NOTE json-key-unknown round.json, weather: this key is not known here and not read"),
                new Case(
                        round -> round.with("round.json", "\"formatVersion\": 1", "\"formatVersion\": 2"),
                        "ERROR format-newer round.json, formatVersion: the round has format version 2, made by a newer Wadeplan. Allowed: a version up to 1. Do: open it with the newer Wadeplan"),
                new Case(
                        round -> round.with("round.json", "\"formatVersion\": 1", "\"formatVersion\": \"one\""),
                        "ERROR json-type round.json, formatVersion: the value is a text, \"one\". Allowed: a whole number from 1 to 1000000. Do: mend it"),
                new Case(
                        round -> round.with(
                                "round.json",
                                "\"stakeUncertaintyM\": 5,",
                                "\"stakeUncertaintyM\": 5, \"stakeUncertaintyM\": 6,"),
                        "ERROR json-broken round.json, line 24: the file stops being JSON here: Duplicate field 'stakeUncertaintyM'. Allowed: an object in braces, keys in quotes, commas between entries, each key once. Do: mend it at or just before this line"),
                new Case(
                        round -> round.with("round.json", "\"stakeUncertaintyM\": 5,", "\"stakeUncertaintyM\": 5"),
                        "ERROR json-broken round.json, line 25: the file stops being JSON here: Unexpected character ('\"' (code 34)): was expecting comma to separate Object entries. Allowed: an object in braces, keys in quotes, commas between entries, each key once. Do: mend it at or just before this line"),
                new Case(
                        round -> round.whole("round.json", "[]"),
                        "ERROR json-broken round.json, line 1: the file holds no object in braces. Allowed: an object in braces, keys in quotes, commas between entries, each key once. Do: mend it at or just before this line"));
    }

    private static Stream<Case> group3() {
        return Stream.of(
                new Case(
                        round -> round.with("round.json", "Atlantic/Azores", "Atlantic/Azzores"),
                        "ERROR zone-unknown round.json, zone: \"Atlantic/Azzores\" is no time zone that is known here. Allowed: a name such as Atlantic/Azores. Do: write Atlantic/Azores if that is meant"),
                new Case(
                        round -> round.with("round.json", "EPSG:32627", "EPSG:99999"),
                        "ERROR crs-unknown round.json, crs: \"EPSG:99999\" is not a coordinate system that is known here. Allowed: an EPSG code such as EPSG:32627 or EPSG:2193. Do: look the code up with whoever made the map data and write it as EPSG: and digits; the streams lie around longitude -20.8, latitude 46.0, in UTM zone 27N (EPSG:32627)"),
                new Case(
                        round -> round.with("round.json", "EPSG:32627", "EPSG:3857"),
                        "ERROR crs-not-for-measuring round.json, crs: EPSG:3857 (WGS 84 / Pseudo-Mercator) stretches lengths away from the equator (by half at 48° north), so it cannot measure a reach. Allowed: a projected system in metres made for the area, such as its UTM zone or national grid. Do: name such a system as the round's; map files in EPSG:3857 can still be read; the streams lie around longitude -20.8, latitude 46.0, in UTM zone 27N (EPSG:32627)"),
                new Case(
                        round -> round.with("round.json", "\"lastDay\": \"2027-09-10\"", "\"lastDay\": \"2027-09-01\""),
                        "ERROR ends-before-start round.json, lastDay: 2027-09-01 is before firstDay, 2027-09-06. Allowed: the same day or later. Do: check both; they may be swapped"),
                new Case(
                        round -> round.with("round.json", "\"lastDay\": \"2027-09-10\"", "\"lastDay\": \"2028-09-10\""),
                        "ERROR round-too-long round.json, lastDay: the round lasts from 2027-09-06 to 2028-09-10. Allowed: at most 31 days. Do: check both days, or part the round",
                        "ERROR reserve-days-order round.json, reserveDays: the reserve days do not follow the last day one after the other. Allowed: days after lastDay, each once, earliest first. Do: put them in order"),
                new Case(
                        round -> round.with(
                                "round.json", "\"firstDay\": \"2027-09-06\"", "\"firstDay\": \"06.09.2027\""),
                        "ERROR date-ambiguous round.json, firstDay: \"06.09.2027\" can be 6 September 2027 or 9 June 2027. Allowed: a date as year-month-day, such as 2027-09-07. Do: write 2027-09-06 or 2027-06-09, whichever is meant"));
    }

    private static Stream<Case> group4() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "round.json", "[\"2027-09-13\", \"2027-09-14\"]", "[\"2027-09-14\", \"2027-09-13\"]"),
                        "ERROR reserve-days-order round.json, reserveDays: the reserve days do not follow the last day one after the other. Allowed: days after lastDay, each once, earliest first. Do: put them in order"),
                new Case(
                        round -> round.with("round.json", "[\"2027-09-13\", \"2027-09-14\"]", "[\"2027-09-13\", 14]"),
                        "ERROR json-type round.json, reserveDays[1]: the value is a number, 14. Allowed: a text in quotes. Do: mend it"),
                new Case(
                        round -> round.with("round.json", "\"civil-dawn\"", "\"civil dawn\""),
                        "ERROR word-unknown round.json, light.dayFrom: \"civil dawn\" is not a word known here; nearest is civil-dawn. Allowed: civil-dawn, sunrise. Do: write civil-dawn if that is meant"),
                new Case(
                        round -> round.with(
                                "round.json", "\"title\": \"Ilvermoor stream fish round 2027\"", "\"title\": \"\""),
                        "ERROR blank round.json, title: the text is empty. Allowed: a text in quotes. Do: fill it in"),
                new Case(
                        round -> round.with("round.json", "\"tide\": {", "\"ebb\": {"),
                        "ERROR json-key-missing round.json, tide: this key is missing. Allowed: an object in braces. Do: add it",
                        "NOTE json-key-unknown round.json, ebb: this key is not known here and not read"),
                new Case(
                        round -> round.with(
                                "round.json", "\"streams\": \"streams.gpkg\"", "\"streams\": \"../streams.gpkg\""),
                        "ERROR file-outside-folder round.json, files.streams: \"../streams.gpkg\" leaves the round folder or is a private file. Allowed: the name of a file in the round folder. Do: copy the file into the folder"));
    }

    private static Stream<Case> group5() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "round.json", "\"streams\": \"streams.gpkg\"", "\"people\": \"people_private.csv\""),
                        "ERROR file-outside-folder round.json, files.people: \"people_private.csv\" leaves the round folder or is a private file. Allowed: the name of a file in the round folder. Do: copy the file into the folder"),
                new Case(
                        round -> round.with(
                                "round.json", "\"streams\": \"streams.gpkg\"", "\"sitez\": \"streams.gpkg\""),
                        "NOTE json-key-unknown round.json, files.sitez: this key is not known here and not read. Do: if sites is meant, rename it"));
    }
}
