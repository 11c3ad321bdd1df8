package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DeterminismTest {

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void restoreThePlace() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    static Stream<DomeSpec> specs() {
        DomeSpec icosahedron = Samples.spec(Solid.ICOSAHEDRON, Breakdown.of(4));
        return Stream.of(
                icosahedron,
                icosahedron.withSpacing(Spacing.ARC).withUp(Up.EDGE).withKeep(new Keep.AboveHeight(-100)),
                icosahedron.withSpacing(Spacing.MIDARC).withKeep(new Keep.Rows(5, 12)),
                icosahedron.withBase(Base.LEVEL).withKeep(new Keep.Rows(5, 12)),
                Samples.spec(Solid.OCTAHEDRON, new Breakdown(3, 1)).withUp(Up.FACE),
                Samples.spec(Solid.TETRAHEDRON, new Breakdown(2, 2)));
    }

    /** Every number and mark in full. */
    private static String print(DomeSpec spec) {
        Dome whole = Dome.of(spec);
        return print(whole) + print(whole.withOpenings(List.of(new Opening("vent", List.of(0, 1, 2), true))));
    }

    private static String print(Dome dome) {
        Parts parts = Parts.of(dome, Joinery.gap(7));
        return Stream.of(
                        List.of(dome.spec(), dome.measures(), dome.notes(), parts.notes(), dome.baseRing()),
                        dome.hubs().stream().map(DeterminismTest::exact).toList(),
                        dome.struts(),
                        dome.panels(),
                        dome.hubs().stream().map(h -> dome.around(h.index())).toList(),
                        parts.strutKinds(),
                        parts.panelKinds(),
                        parts.hubKinds())
                .map(Object::toString)
                .reduce("", (one, next) -> one + "\n" + next);
    }

    /** The text of a vector itself is rounded, and by the locale. */
    private static List<Object> exact(Hub hub) {
        Vector3D at = hub.position();
        return List.of(at.getX(), at.getY(), at.getZ(), hub.site(), hub.row(), hub.place(), hub.open());
    }

    @ParameterizedTest
    @MethodSource("specs")
    void theSameSpecificationGivesTheSameDome(DomeSpec spec) {
        assertThat(print(spec)).isEqualTo(print(spec));
    }

    @ParameterizedTest
    @MethodSource("specs")
    void theSameDomeComesOutInEveryPlace(DomeSpec spec) {
        Locale.setDefault(Locale.ROOT);
        String here = print(spec);
        for (String tag : List.of("tr-TR", "de-DE", "ar-EG")) {
            Locale.setDefault(Locale.forLanguageTag(tag));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertThat(print(spec)).isEqualTo(here);
        }
    }

    @ParameterizedTest
    @CsvSource({"tr-TR, MIDARC", "de-DE, MIDARC", "ar-EG, ARC", "tr-TR, ARC"})
    void theSameWordsComeOutInEveryPlace(String tag, Spacing spacing) {
        DomeSpec wrong = Samples.spec(Solid.ICOSAHEDRON, new Breakdown(2, 1)).withSpacing(spacing);
        Locale.setDefault(Locale.ROOT);
        String here = catchThrowableOfType(CalotteException.class, () -> Dome.of(wrong))
                .getMessage();
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(catchThrowableOfType(CalotteException.class, () -> Dome.of(wrong)))
                .hasMessage(here);
    }
}
