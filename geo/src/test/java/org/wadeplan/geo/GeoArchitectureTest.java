package org.wadeplan.geo;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.wadeplan.geo", importOptions = ImportOption.DoNotIncludeTests.class)
class GeoArchitectureTest {

    @ArchTest
    static final ArchRule ONE_DOOR_TO_COORDINATE_SYSTEMS = noClasses()
            .that()
            .resideOutsideOfPackage("org.wadeplan.geo.crs")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.geotools.referencing..",
                    "org.geotools.api.referencing..",
                    "org.geotools.geometry..",
                    "org.geotools.api.geometry..")
            .because("authorities differ in which axis comes first, and swapped coordinates are silent nonsense");

    @ArchTest
    static final ArchRule ONE_DOOR_TO_GRIDS = noClasses()
            .that()
            .resideOutsideOfPackage("org.wadeplan.geo.terrain")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("it.geosolutions..")
            .because(
                    "a grid's bytes are foreign: only the reader knows what has to be looked at before they are unpacked");

    @ArchTest
    static final ArchRule ONE_DOOR_TO_FILTERS = noClasses()
            .that()
            .resideOutsideOfPackage("org.wadeplan.geo.io")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.geotools.filter..", "org.geotools.api.filter..")
            .because("a filter that is evaluated as it comes takes unknown columns and values for something");

    @ArchTest
    static final ArchRule NOTHING_ELSE_OF_GEOTOOLS = noClasses()
            .that()
            .resideOutsideOfPackages("org.wadeplan.geo.crs", "org.wadeplan.geo.io")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.geotools..")
            .because("crs is the door to coordinate systems and io to filters; nothing else is needed of it");

    @ArchTest
    static final ArchRule ONE_DOOR_TO_SQLITE = noClasses()
            .that()
            .resideOutsideOfPackage("org.wadeplan.geo.io")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "org.sqlite..")
            .because("only the reader knows how to open a person's file without ever writing to it");

    @ArchTest
    static final ArchRule NO_CIRCLES = slices().matching("org.wadeplan.geo.(*)..")
            .should()
            .beFreeOfCycles()
            .because("data goes forward only: problem, crs, io, network, reach");
}
