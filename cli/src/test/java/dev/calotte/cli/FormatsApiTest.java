package dev.calotte.cli;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import dev.calotte.testing.ApiRules;

/** What whoever depends on a format may rely on, as on core; what the modules export their own tests say. */
@AnalyzeClasses(
        packages = {"dev.calotte.dxf", "dev.calotte.svg", "dev.calotte.stl"},
        importOptions = ImportOption.DoNotIncludeTests.class)
class FormatsApiTest {

    @ArchTest
    static final ArchTests RULES = ArchTests.in(ApiRules.class);
}
