package dev.calotte.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.HashMap;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The rules between the modules; those inside core stand there. */
@AnalyzeClasses(
        packages = "dev.calotte",
        importOptions = {DoNotIncludeTests.class, HouseTest.NoToolsOfTests.class})
class HouseTest {

    /** What core lends to the tests of other modules. */
    static final class NoToolsOfTests implements ImportOption {

        @Override
        public boolean includes(Location location) {
            return !location.contains("dev/calotte/testing");
        }
    }

    private static final String[] FORMATS = {"dev.calotte.dxf..", "dev.calotte.svg..", "dev.calotte.stl.."};

    @ArchTest
    static final ArchRule FORMATS_KNOW_NO_DOMES = noClasses()
            .that()
            .resideInAnyPackage(FORMATS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "dev.calotte.sphere..",
                    "dev.calotte.dome..",
                    "dev.calotte.parts..",
                    "dev.calotte.assembly..",
                    "dev.calotte.caution..",
                    "dev.calotte.drawing..",
                    "dev.calotte.solid..",
                    "dev.calotte.output..",
                    "dev.calotte.cli..")
            .because("what a drawing shows is decided once, and every format writes the same");

    @ArchTest
    static final ArchRule NOBODY_KNOWS_A_FORMAT = noClasses()
            .that()
            .resideOutsideOfPackages(FORMATS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(FORMATS)
            .because("a new format is a new module, found by the service loader, and edits no other file");

    @ArchTest
    static final ArchRule CORE_DOES_NOT_KNOW_THE_COMMAND = noClasses()
            .that()
            .resideOutsideOfPackage("dev.calotte.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.calotte.cli..")
            .because("the library is used without the command");

    @ArchTest
    static final ArchRule THE_COMMAND_COMPUTES_NO_GEOMETRY = noClasses()
            .that()
            .resideInAPackage("dev.calotte.cli..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.apache.commons.math3..").and(not(type(Vector3D.class))))
            .orShould()
            .callMethodWhere(target(owner(type(Vector3D.class))).and(not(target(name("toArray")))))
            .because("every number is computed in core, where it is tested");

    @ArchTest
    static final ArchRule RESULTS_DO_NOT_DEPEND_ON_THE_RUN = noClasses()
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(Random.class)
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.time..")
            .because("the same brief gives the same bytes");

    @ArchTest
    static final ArchRule NOTHING_IS_HASHED_ON_ITS_WAY_INTO_A_FILE = noClasses()
            .that()
            .resideInAnyPackage("dev.calotte.cli.report..", "dev.calotte.cli.folder..", "dev.calotte.dxf..")
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(HashMap.class)
            .because("the order of a hash is an accident; the STL writer only looks things up in one");
}
