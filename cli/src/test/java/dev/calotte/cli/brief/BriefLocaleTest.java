package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.problem.Problem;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BriefLocaleTest {

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr", "de", "ar-EG-u-nu-arab", "th-TH-u-nu-thai"})
    void everyLocaleReadsAndRefusesTheSame(String tag) {
        String good =
                "units: imperial\ndome: {breakdown: 3, spacing: midarc}\nsize: {height: 10 ft 3 1/2 in}\nfiles: [dxf, stl]";
        String bad =
                "UNITS: METRIC\nunits: IMPERIAL\ndome: {SOLID: x, breakdown: 1001, solid: ICOSAHEDRON}\nsize: {HEIGHT: 1}";
        Locale.setDefault(Locale.ROOT);
        Project project = Briefs.of(good).project();
        List<Problem> problems = Briefs.problems(Briefs.of(bad));
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Briefs.of(good).project()).isEqualTo(project);
        assertThat(Briefs.problems(Briefs.of(bad))).isEqualTo(problems);
        assertThat(problems).extracting(Problem::mend).anyMatch(mend -> mend.contains("Did you mean imperial?"));
    }
}
