package dev.calotte;

import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What whoever depends on the library may rely on in every exported type. */
@AnalyzeClasses(packages = "dev.calotte", importOptions = ImportOption.DoNotIncludeTests.class)
class ApiTest {

    private static final Set<String> COPIES = Set.of("copyOf", "toList", "unmodifiableMap", "unmodifiableSortedMap");

    @ArchTest
    static final ArchRule VALUES_HOLD_NO_ARRAYS = classes()
            .that(areExportedRecords())
            .should(be(DescribedPredicate.describe(
                    "without arrays",
                    type -> components(type)
                            .noneMatch(component -> component.getType().isArray()))))
            .because("an array can be changed by whoever gets it, and equals compares it by identity");

    @ArchTest
    static final ArchRule VALUES_COPY_WHAT_THEY_ARE_GIVEN = classes()
            .that(areExportedRecords())
            .should(be(DescribedPredicate.describe("made of copies", ApiTest::copies)))
            .because("a list that its giver changes later would change the value");

    @ArchTest
    static final ArchRule NOBODY_EXTENDS_A_VALUE = classes()
            .that()
            .arePublic()
            .and()
            .areNotInterfaces()
            .and()
            .doNotHaveModifier(JavaModifier.FINAL)
            .and()
            .areNotEnums()
            .should(be(DescribedPredicate.describe(
                    "closed to others",
                    type -> type.getConstructors().stream()
                            .noneMatch(made -> made.getModifiers().contains(JavaModifier.PUBLIC)
                                    || made.getModifiers().contains(JavaModifier.PROTECTED)))))
            .because("a subclass can break what its parent promises");

    @Test
    void everyExportedPackageSaysThatNothingIsNull() throws IOException, ClassNotFoundException {
        try (InputStream in = Files.newInputStream(Path.of("target/classes/module-info.class"))) {
            Set<ModuleDescriptor.Exports> exported = ModuleDescriptor.read(in).exports();
            assertThat(exported).hasSizeGreaterThan(20);
            for (ModuleDescriptor.Exports one : exported) {
                Class<?> info = Class.forName(one.source() + ".package-info");
                assertThat(info.getAnnotation(NullMarked.class))
                        .as(one.source())
                        .isNotNull();
            }
        }
    }

    private static DescribedPredicate<JavaClass> areExportedRecords() {
        return DescribedPredicate.describe(
                "are exported records", type -> type.isRecord() && isPublicAllTheWay(type.reflect()));
    }

    private static boolean isPublicAllTheWay(Class<?> type) {
        return type == null || (Modifier.isPublic(type.getModifiers()) && isPublicAllTheWay(type.getEnclosingClass()));
    }

    private static Stream<RecordComponent> components(JavaClass type) {
        return Arrays.stream(type.reflect().getRecordComponents());
    }

    /** Whether the constructor that all others call copies as many things as there are to be copied. */
    private static boolean copies(JavaClass type) {
        long wanted = components(type)
                .map(RecordComponent::getType)
                .filter(held -> Collection.class.isAssignableFrom(held) || Map.class.isAssignableFrom(held))
                .count();
        Class<?>[] all = components(type).map(RecordComponent::getType).toArray(Class<?>[]::new);
        return copied(type.getConstructor(all)) >= wanted;
    }

    private static long copied(JavaConstructor canonical) {
        return canonical.getMethodCallsFromSelf().stream()
                .map(JavaMethodCall::getName)
                .filter(COPIES::contains)
                .count();
    }
}
