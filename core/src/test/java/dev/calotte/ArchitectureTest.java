package dev.calotte;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethodWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Date;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

@AnalyzeClasses(packages = "dev.calotte", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    private static final Set<String> ROUNDED_BY_THE_MACHINE = Set.of(
            "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
            "log10", "log1p", "pow", "cbrt", "hypot");

    @ArchTest
    static final ArchRule PACKAGES_STAND_ON_THOSE_BELOW = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("problem")
            .definedBy("dev.calotte.problem..")
            .layer("threads")
            .definedBy("dev.calotte.threads..")
            .layer("units")
            .definedBy("dev.calotte.units..")
            .layer("geometry")
            .definedBy("dev.calotte.geometry..")
            .layer("sphere")
            .definedBy("dev.calotte.sphere..")
            .layer("dome")
            .definedBy("dev.calotte.dome..")
            .layer("parts")
            .definedBy("dev.calotte.parts..")
            .layer("pattern")
            .definedBy("dev.calotte.pattern..")
            .layer("stock")
            .definedBy("dev.calotte.stock..")
            .layer("nest")
            .definedBy("dev.calotte.nest..")
            .layer("choose")
            .definedBy("dev.calotte.choose..")
            .layer("compare")
            .definedBy("dev.calotte.compare..")
            .layer("assembly")
            .definedBy("dev.calotte.assembly..")
            .layer("bill")
            .definedBy("dev.calotte.bill..")
            .layer("caution")
            .definedBy("dev.calotte.caution..")
            .layer("output")
            .definedBy("dev.calotte.output..")
            .layer("check")
            .definedBy("dev.calotte.check..")
            .layer("drawing")
            .definedBy("dev.calotte.drawing..")
            .layer("solid")
            .definedBy("dev.calotte.solid..")
            .layer("model")
            .definedBy("dev.calotte.model..")
            .whereLayer("problem")
            .mayNotAccessAnyLayer()
            .whereLayer("threads")
            .mayNotAccessAnyLayer()
            .whereLayer("units")
            .mayOnlyAccessLayers("problem")
            .whereLayer("geometry")
            .mayOnlyAccessLayers("problem", "units")
            .whereLayer("sphere")
            .mayOnlyAccessLayers("problem", "units", "geometry")
            .whereLayer("dome")
            .mayOnlyAccessLayers("problem", "threads", "units", "geometry", "sphere")
            .whereLayer("parts")
            .mayOnlyAccessLayers("problem", "units", "geometry", "sphere", "dome")
            .whereLayer("pattern")
            .mayOnlyAccessLayers("problem", "units", "geometry", "sphere", "dome", "parts")
            .whereLayer("stock")
            .mayOnlyAccessLayers("geometry")
            .whereLayer("nest")
            .mayOnlyAccessLayers("problem", "threads", "geometry", "stock")
            .whereLayer("choose")
            .mayOnlyAccessLayers("problem", "units", "geometry", "sphere", "dome", "parts", "pattern", "stock", "nest")
            .whereLayer("compare")
            .mayOnlyAccessLayers(
                    "problem", "threads", "geometry", "sphere", "dome", "parts", "pattern", "stock", "nest", "choose")
            .whereLayer("assembly")
            .mayOnlyAccessLayers("problem", "units", "geometry", "sphere", "dome", "parts", "pattern")
            .whereLayer("bill")
            .mayOnlyAccessLayers("units", "geometry", "dome", "parts", "pattern", "stock", "nest", "choose")
            .whereLayer("caution")
            .mayOnlyAccessLayers("dome", "parts", "pattern", "assembly")
            .whereLayer("model")
            .mayOnlyBeAccessedByLayers("output")
            .whereLayer("model")
            .mayOnlyAccessLayers(
                    "problem", "units", "geometry", "dome", "parts", "stock", "nest", "assembly", "drawing")
            .whereLayer("drawing")
            .mayOnlyBeAccessedByLayers("output", "model", "check")
            .whereLayer("check")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("check")
            .mayOnlyAccessLayers("units", "geometry", "assembly", "drawing")
            .whereLayer("solid")
            .mayOnlyBeAccessedByLayers("output")
            .whereLayer("output")
            .mayNotBeAccessedByAnyLayer()
            .because(
                    "each step of the way from a specification to a file can be read, tested and timed without the next");

    @ArchTest
    static final ArchRule DOCUMENTS_KNOW_NO_DOMES = noClasses()
            .that()
            .resideInAPackage("dev.calotte.document..")
            .should()
            .dependOnClassesThat(ours("..document..", "..geometry.."))
            .because("what is shown is decided before it becomes a document, once for all formats");

    @ArchTest
    static final ArchRule EXPORTERS_SEE_DOCUMENTS_ONLY = noClasses()
            .that()
            .resideInAPackage("dev.calotte.export..")
            .should()
            .dependOnClassesThat(ours("..export..", "..contour..", "..document.."))
            .because("a new format must not need to know what a dome is");

    @ArchTest
    static final ArchRule CONTOURS_KNOW_DOCUMENTS_ONLY = noClasses()
            .that()
            .resideInAPackage("dev.calotte.contour..")
            .should()
            .dependOnClassesThat(ours("..contour..", "..document..", "..units.."))
            .because("how a tool follows a line does not depend on what the line is for, nor on how it is written");

    @ArchTest
    static final ArchRule ONLY_DRAWING_AND_SOLID_MAKE_DOCUMENTS = noClasses()
            .that()
            .resideInAnyPackage(
                    "..problem..",
                    "..units..",
                    "..geometry..",
                    "..sphere..",
                    "..dome..",
                    "..parts..",
                    "..pattern..",
                    "..stock..",
                    "..nest..",
                    "..choose..",
                    "..compare..",
                    "..assembly..",
                    "..bill..",
                    "..caution..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..document..", "..export..")
            .because("geometry and parts are worth having without any file");

    @ArchTest
    static final ArchRule NO_PACKAGES_IN_CIRCLES = slices().matching("dev.calotte.(*)..")
            .should()
            .beFreeOfCycles()
            .because("of two packages that need each other neither can be understood alone");

    @ArchTest
    static final ArchRule FUNCTIONS_ARE_THE_SAME_ON_EVERY_MACHINE = noClasses()
            .should(callMethodWhere(describe("Math function that may differ", ArchitectureTest::differs)))
            .because("the same dome must give the same bytes everywhere; StrictMath promises that, Math does not");

    private static boolean differs(JavaCall<?> call) {
        return call.getTargetOwner().isEquivalentTo(Math.class) && ROUNDED_BY_THE_MACHINE.contains(call.getName());
    }

    @ArchTest
    static final ArchRule NOTHING_IS_HASHED = noClasses()
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(HashMap.class, HashSet.class)
            .because("their order is an accident, and accidents must not reach a file");

    @ArchTest
    static final ArchRule TEXT_NAMES_ITS_LOCALE = noClasses()
            .should(callMethodWhere(describe("formatting in the default locale", ArchitectureTest::usesDefaultLocale)))
            .because("a comma for a point breaks every machine that reads the file");

    private static boolean usesDefaultLocale(JavaCall<?> call) {
        boolean formats = Set.of("format", "formatted", "printf", "toLowerCase", "toUpperCase")
                .contains(call.getName());
        boolean ofText = call.getTargetOwner().isEquivalentTo(String.class);
        boolean named = call.getTarget().getRawParameterTypes().stream().anyMatch(t -> t.isEquivalentTo(Locale.class));
        return formats && ofText && !named;
    }

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("a library speaks through its results and exceptions");

    @ArchTest
    static final ArchRule NOTHING_DEPENDS_ON_THE_MOMENT = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.time..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(Random.class, Date.class)
            .because("the same brief gives the same bytes today and tomorrow");

    @ArchTest
    static final ArchRule NAMES_SAY_WHAT_A_THING_IS = classes()
            .should()
            .haveNameNotMatching(".*(Manager|Helper|Utils?|Data|Impl)")
            .because("such a name fits everything, so it tells nothing");

    @ArchTest
    static final ArchRule FIELDS_ARE_HIDDEN_OR_FIXED = fields().should()
            .bePrivate()
            .orShould()
            .beFinal()
            .because("what can be changed from outside cannot be reasoned about inside");

    /** A class of this library in none of the packages. */
    private static DescribedPredicate<JavaClass> ours(String... packages) {
        return JavaClass.Predicates.resideInAPackage("dev.calotte..")
                .and(JavaClass.Predicates.resideOutsideOfPackages(packages));
    }
}
