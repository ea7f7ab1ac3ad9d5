package org.wadeplan.desktop.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import javafx.application.Application;

@AnalyzeClasses(packages = "org.wadeplan.desktop", importOptions = ImportOption.DoNotIncludeTests.class)
class DesktopArchitectureTest {

    @ArchTest
    static final ArchRule viewModelsKnowNoScene = noClasses()
            .that()
            .haveSimpleNameEndingWith("ViewModel")
            .or()
            .resideInAPackage("..session..")
            .or()
            .resideInAPackage("..work..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx.scene..", "javafx.stage..")
            .because("what decides must be tested without a toolkit");

    @ArchTest
    static final ArchRule onePlaceCallsThePlanner = noClasses()
            .that()
            .doNotHaveSimpleName("CoreDesk")
            .and()
            .doNotHaveSimpleName("Skies")
            .and()
            .resideOutsideOfPackage("..session..")
            .should()
            .dependOnClassesThat()
            .haveSimpleNameEndingWith("Planner")
            .orShould()
            .dependOnClassesThat()
            .haveSimpleName("RoundReader")
            .orShould()
            .dependOnClassesThat()
            .haveSimpleName("PackWriter")
            .because("the real planner is plugged in by one class, so that tests can plug in another");

    @ArchTest
    static final ArchRule theMainClassIsNoApplication = classes()
            .that()
            .haveSimpleName("Launcher")
            .should()
            .notBeAssignableTo(Application.class)
            .because("JavaFX on the class path refuses a main class that is an Application");

    @ArchTest
    static final ArchRule screensDoNotKnowTheFrame = noClasses()
            .that()
            .resideOutsideOfPackage("..app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("..app..")
            .because("the frame is put together from the screens, not the other way round");
}
