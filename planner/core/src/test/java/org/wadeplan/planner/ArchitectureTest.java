package org.wadeplan.planner;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Locale;

/** The layering of geo, hazards and the core; each rule says why. */
@AnalyzeClasses(packages = "org.wadeplan", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String CORE = "org.wadeplan.planner.";

    /** The image reader of the platform hands over a grid's cells as a raster of java.awt.image, which needs no display. */
    private static final String GRID_FILE = "org.wadeplan.geo.terrain.GeoTiffFile";

    @ArchTest
    static final ArchRule coreKnowsNoWindowAndNoCommandLine = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(GRID_FILE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "picocli..", "java.awt..", "javax.swing..")
            .because("plans must be made on machines without a display, by any front end");

    @ArchTest
    static final ArchRule geoStandsAlone = noClasses()
            .that()
            .resideInAPackage("org.wadeplan.geo..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.wadeplan.hazards..", "org.wadeplan.planner..")
            .because("geo is the lowest module");

    @ArchTest
    static final ArchRule hazardsKnowNoMethodAndNoRound = noClasses()
            .that()
            .resideInAPackage("org.wadeplan.hazards..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.wadeplan.planner..")
            .because("a hazard follows from what people are exposed to, whatever plan put them there");

    @ArchTest
    static final ArchRule oneDoorToCoordinateSystems = noClasses()
            .that()
            .resideOutsideOfPackage("org.wadeplan.geo.crs..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.geotools.referencing..", "org.geotools.api.referencing..")
            .because("axis order differs between systems, and swapped axes give silent nonsense");

    @ArchTest
    static final ArchRule noClockZoneOrChanceInTheCore = noClasses()
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(Clock.class, "systemUTC")
            .orShould()
            .callMethod(ZoneId.class, "systemDefault")
            .orShould()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Math.class, "random")
            .because("the same round must give the same plan on any machine, at any time");

    @ArchTest
    static final ArchRule roundIsOnlyData =
            looksOnlyBack("round", "effort", "kit", "decon", "week", "hazard", "plan", "pack");

    @ArchTest
    static final ArchRule methodLooksOnlyBack =
            looksOnlyBack("method", "effort", "kit", "decon", "week", "hazard", "plan", "pack");

    @ArchTest
    static final ArchRule effortLooksOnlyBack =
            looksOnlyBack("effort", "kit", "decon", "week", "hazard", "plan", "pack");

    @ArchTest
    static final ArchRule hazardsComeBeforeThePack = looksOnlyBack("hazard", "pack");

    @ArchTest
    static final ArchRule verifierSharesNoCodeWithTheSearch = noClasses()
            .that()
            .resideInAPackage(CORE + "week.verify..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    CORE + "week.search..", CORE + "week.rule..", CORE + "week.light..", CORE + "week.window..")
            .allowEmptyShould(false)
            .because("a check that shares code with what it checks repeats its mistakes");

    @ArchTest
    static final ArchRule noVagueNames = classes()
            .should()
            .haveNameNotMatching(".*(Util|Utils|Helper|Manager|Impl|Common)$")
            .because("a name must say what the thing does");

    private static ArchRule looksOnlyBack(String step, String... later) {
        String[] packages = new String[later.length];
        for (int i = 0; i < later.length; i++) {
            packages[i] = CORE + later[i] + "..";
        }
        return noClasses()
                .that()
                .resideInAPackage(CORE + step + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .because("data goes forward only, and only RoundPlanner knows the order of the steps");
    }
}
