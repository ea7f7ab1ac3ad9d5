package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** One file whose form is broken in a copy of the demo round gives exactly the sentences that a person needs. */
class BrokenFormTest {

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(group1(), group2(), group3(), group4()).flatMap(group -> group);
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
                        round -> round.with(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source",
                                "conductivity_max_us_cm,usable_seconds,source"),
                        "ERROR column-missing pack_seconds.csv, line 1: there is no column usable_s. Allowed: a header with the columns conductivity_max_us_cm, usable_s, source. Do: add what is missing, or mend the spelling in the first line",
                        "NOTE column-unknown pack_seconds.csv, line 1: the column usable_seconds is not known here and not read"),
                new Case(
                        round -> round.with("permits.csv", ",closed_until,", ",closed_to,"),
                        "ERROR closure-half permits.csv, line 2 (P-BRN), column closed_from: the closed season has only one of its two days. Allowed: closed_from and closed_until together, or neither. Do: add the other day",
                        "WARNING column-absent permits.csv, line 1: there is no column closed_until; everything they would say counts as not known. Allowed: all columns of the table, blank where a value is not known. Do: add them",
                        "NOTE column-unknown permits.csv, line 1: the column closed_to is not known here and not read"),
                new Case(
                        round -> round.with(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source",
                                "conductivity_max_us_cm,usable_s,source,remark"),
                        "ERROR cells-too-few pack_seconds.csv, line 2: the row has 3 cells and the header 4. Allowed: as many cells as the header. Do: add the blank cells that are missing",
                        "ERROR cells-too-few pack_seconds.csv, line 3: the row has 3 cells and the header 4. Allowed: as many cells as the header. Do: add the blank cells that are missing",
                        "ERROR cells-too-few pack_seconds.csv, line 4: the row has 3 cells and the header 4. Allowed: as many cells as the header. Do: add the blank cells that are missing",
                        "ERROR cells-too-few pack_seconds.csv, line 5: the row has 3 cells and the header 4. Allowed: as many cells as the header. Do: add the blank cells that are missing",
                        "NOTE column-unknown pack_seconds.csv, line 1: the column remark is not known here and not read"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source,remark\n600,1400,sheet,fine\n"),
                        "NOTE column-unknown pack_seconds.csv, line 1: the column remark is not known here and not read"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source,source\n600,1400,sheet,sheet\n"),
                        "ERROR column-twice pack_seconds.csv, line 1: the column source stands there 2 times. Allowed: each column once. Do: delete or rename all but one"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source\n300,2000\n600,1400,sheet\n"),
                        "ERROR cells-too-few pack_seconds.csv, line 2: the row has 2 cells and the header 3. Allowed: as many cells as the header. Do: add the blank cells that are missing"));
    }

    private static Stream<Case> group2() {
        return Stream.of(
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source\n300,2000,a sheet, of paper\n600,1400,sheet\n"),
                        "ERROR cells-too-many pack_seconds.csv, line 2: the row has 4 cells and the header 3. Allowed: as many cells as the header. Do: put quotes around a cell that holds a comma, and write decimals with a point"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv", "conductivity_max_us_cm;usable_s;source\n600;1400;sheet\n"),
                        "NOTE separator-semicolon pack_seconds.csv: cells are parted by semicolons, so lists inside a cell need quotes around them. Allowed: comma or semicolon"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv", "conductivity_max_us_cm\tusable_s\tsource\n600\t1400\tsheet\n"),
                        "ERROR column-missing pack_seconds.csv, line 1: there are no columns conductivity_max_us_cm, usable_s, source. Allowed: a header with the columns conductivity_max_us_cm, usable_s, source. Do: add them, or check that comma or semicolon parts the cells",
                        "NOTE column-unknown pack_seconds.csv, line 1: the column conductivity_max_us_cm\tusable_s\tsource is not known here and not read"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source\n300,2000,\"sheet\n600,1400,sheet\n"),
                        "ERROR csv-quoting pack_seconds.csv, line 2: a quote is opened in the row that starts here and never closed. Allowed: quotes in pairs around a whole cell, and a quote inside a cell doubled. Do: mend the quotes; nothing after this row could be read"),
                new Case(
                        round -> round.whole(
                                "pack_seconds.csv",
                                "conductivity_max_us_cm,usable_s,source\n300,2000,\"sheet\" old\n600,1400,sheet\n"),
                        "ERROR csv-quoting pack_seconds.csv, line 2: there is text between a closing quote and the next separator. Allowed: quotes in pairs around a whole cell, and a quote inside a cell doubled. Do: mend the quotes; nothing after this row could be read"),
                new Case(
                        round -> round.whole("pack_seconds.csv", ""),
                        "ERROR file-empty pack_seconds.csv: the file is empty, 0 bytes. Allowed: a file with content. Do: copy it again; the copy probably failed"));
    }

    private static Stream<Case> group3() {
        return Stream.of(
                new Case(
                        round -> round.whole("pack_seconds.csv", "\n\n"),
                        "ERROR table-empty pack_seconds.csv, line 1: the file has no header and no rows. Allowed: a header with the columns conductivity_max_us_cm, usable_s, source. Do: fill it"),
                new Case(
                        round -> round.without("pack_seconds.csv"),
                        "ERROR file-missing pack_seconds.csv: the file is not there. Allowed: the file in the round folder. Do: add it, or name the one that holds it under files in round.json"),
                new Case(
                        round -> round.without("method.dmn"),
                        "ERROR file-missing method.dmn: the file is not there. Allowed: the file in the round folder. Do: add it, or name the one that holds it under files in round.json"),
                new Case(
                        round -> round.without("streams.gpkg"),
                        "ERROR file-missing streams.gpkg: the file is not there. Allowed: the file in the round folder. Do: add it, or name the one that holds it under files in round.json"),
                new Case(
                        round -> round.without("parcels.gpkg"),
                        "ERROR file-missing parcels.gpkg: the file is not there. Allowed: the file in the round folder. Do: add it, or name the one that holds it under files in round.json"),
                new Case(
                        round -> round.whole("streams.gpkg", ""),
                        "ERROR file-empty streams.gpkg: the file is empty, 0 bytes. Allowed: a file with content. Do: copy it again; the copy probably failed"));
    }

    private static Stream<Case> group4() {
        return Stream.of(
                new Case(
                        round -> round.whole("streams.gpkg", "no map at all"),
                        "ERROR not-geopackage streams.gpkg: the file is not a GeoPackage: its first bytes are something else. Allowed: a GeoPackage (.gpkg). Do: export the layer again as GeoPackage"),
                new Case(
                        round -> round.whole("catchments.gpkg", "no map at all"),
                        "ERROR not-geopackage catchments.gpkg: the file is not a GeoPackage: its first bytes are something else. Allowed: a GeoPackage (.gpkg). Do: export the layer again as GeoPackage"));
    }
}
