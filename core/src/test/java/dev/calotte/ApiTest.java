package dev.calotte;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import dev.calotte.testing.ApiRules;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What whoever depends on the library may rely on in every exported type. */
@AnalyzeClasses(packages = "dev.calotte", importOptions = ImportOption.DoNotIncludeTests.class)
class ApiTest {

    @ArchTest
    static final ArchTests RULES = ArchTests.in(ApiRules.class);

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
}
