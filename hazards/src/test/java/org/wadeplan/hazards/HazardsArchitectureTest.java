package org.wadeplan.hazards;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

@AnalyzeClasses(packages = "org.wadeplan.hazards", importOptions = ImportOption.DoNotIncludeTests.class)
class HazardsArchitectureTest {

    @ArchTest
    static final ArchRule HAZARDS_KNOW_ONLY_THE_ERROR_MODEL_OF_GEO = noClasses()
            .should()
            .dependOnClassesThat(resideInAPackage("org.wadeplan..")
                    .and(resideOutsideOfPackage("org.wadeplan.hazards.."))
                    .and(resideOutsideOfPackage("org.wadeplan.geo.problem..")))
            .because("an exposure holds all that hazards need: they know no method, no round and no map");

    @ArchTest
    static final ArchRule LIMITS_STAND_ALONE = noClasses()
            .that()
            .resideInAPackage("..limits..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.wadeplan..").and(resideOutsideOfPackage("..hazards.limits..")))
            .because("formulas are checked against print, whatever the register says");

    @ArchTest
    static final ArchRule REGISTER_KNOWS_NO_ASSESSMENT = noClasses()
            .that()
            .resideInAPackage("..register..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..hazards.assess..", "..hazards.briefing..")
            .because("data goes forward only");

    @ArchTest
    static final ArchRule ASSESSMENT_KNOWS_NO_BRIEFING = noClasses()
            .that()
            .resideInAPackage("..assess..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("..hazards.briefing..")
            .because("data goes forward only");

    @ArchTest
    static final ArchRule NO_CLOCK = noClasses()
            .should()
            .callMethod(Clock.class, "systemUTC")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(ZoneId.class, "systemDefault")
            .because("the same inputs give the same briefing on any day");
}
