package dev.calotte.testing;

import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What whoever depends on a module may rely on in every exported type of it. */
public final class ApiRules {

    private static final Set<String> COPIES = Set.of("copyOf", "toList", "unmodifiableMap", "unmodifiableSortedMap");

    /** Values cannot be changed through what they hold. */
    @ArchTest
    public static final ArchRule VALUES_HOLD_NO_ARRAYS = classes()
            .that(areExportedRecords())
            .should(be(DescribedPredicate.describe(
                    "without arrays",
                    type -> components(type)
                            .noneMatch(component -> component.getType().isArray()))))
            .because("an array can be changed by whoever gets it, and equals compares it by identity");

    /** Nor through what they were made of. */
    @ArchTest
    public static final ArchRule VALUES_COPY_WHAT_THEY_ARE_GIVEN = classes()
            .that(areExportedRecords())
            .should(be(DescribedPredicate.describe("made of copies", ApiRules::copies)))
            .because("a list that its giver changes later would change the value");

    /** Nor by a subclass. */
    @ArchTest
    public static final ArchRule NOBODY_EXTENDS_A_VALUE = classes()
            .that()
            .arePublic()
            .and()
            .areNotInterfaces()
            .and()
            .areNotEnums()
            .should(be(DescribedPredicate.describe(
                    "final or closed to others",
                    type -> type.getModifiers().contains(JavaModifier.FINAL)
                            || type.getConstructors().stream()
                                    .noneMatch(made -> made.getModifiers().contains(JavaModifier.PUBLIC)
                                            || made.getModifiers().contains(JavaModifier.PROTECTED)))))
            .because("a subclass can break what its parent promises");

    private ApiRules() {}

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
