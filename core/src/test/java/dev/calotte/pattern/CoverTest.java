package dev.calotte.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoverTest {

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "a b", "a/b", "a\\b", "glä", "a\n", "a:b"})
    void aNameThatIsNoFileNameIsRefused(String name) {
        assertThatIllegalArgumentException().isThrownBy(() -> Cover.of(name)).withMessage("no cover is called " + name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "Z", "0", "9", ".", "_", "-", "inner_skin-2.1"})
    void lettersDigitsAndThreeSignsMakeAName(String name) {
        assertThat(Cover.of(name).name()).isEqualTo(name);
    }

    @Test
    void aCoverIsThinAndPlainUntilItIsSaidOtherwise() {
        Cover cover = Cover.of("net");
        assertThat(cover.sheeting()).isEqualTo(new Sheeting(0, 0, false));
        assertThat(cover.allowances()).isEqualTo(new Allowances(0, 0, 0, Corner.POINTED, 0));
        assertThat(cover.fasteners()).isEmpty();
        assertThat(cover.treatment()).isEqualTo(new Treatment(false, false, Splitting.NEVER, false));
        assertThat(cover.where("edge")).isEqualTo("covers.net.edge");
    }

    @Test
    void everyWithChangesOneThing() {
        Sheeting sheeting = new Sheeting(3, 4, true);
        Allowances allowances = Allowances.of(5, 6).withCorner(Corner.MIRRORED).withHubRelief(7);
        Fasteners fasteners = new Fasteners(5, 20, 300);
        Treatment treatment = new Treatment(true, true, Splitting.SEAM, true);
        Cover all =
                Cover.of("all").with(sheeting).with(allowances).with(fasteners).with(treatment);
        assertThat(all).isEqualTo(new Cover("all", sheeting, allowances, Optional.of(fasteners), treatment));
        assertThat(allowances).isEqualTo(new Allowances(5, 5, 6, Corner.MIRRORED, 7));
    }

    @Test
    void sheetingIsNoThinnerThanNothing() {
        assertThatCode(() -> new Sheeting(-40, 0, true)).doesNotThrowAnyException();
        refused(() -> new Sheeting(0, -0.001, false));
        refused(() -> new Sheeting(0, Double.NaN, false));
        refused(() -> new Sheeting(0, Double.POSITIVE_INFINITY, false));
        refused(() -> new Sheeting(Double.NEGATIVE_INFINITY, 1, false));
        refused(() -> new Sheeting(Double.NaN, 1, false));
    }

    @Test
    void theWideAllowanceIsNotTheNarrowerOne() {
        assertThatCode(() -> new Allowances(8, 8, -5, Corner.BLUNT, 0)).doesNotThrowAnyException();
        assertThatCode(() -> new Allowances(-8, -7, 0, Corner.BLUNT, 30)).doesNotThrowAnyException();
        refused(() -> new Allowances(8, 7.999, 0, Corner.POINTED, 0));
        refused(() -> new Allowances(8, 9, 0, Corner.POINTED, -0.001));
        refused(() -> new Allowances(8, Double.POSITIVE_INFINITY, 0, Corner.POINTED, 0));
        refused(() -> new Allowances(8, 9, Double.NaN, Corner.POINTED, 0));
        refused(() -> new Allowances(8, 9, 0, Corner.POINTED, Double.POSITIVE_INFINITY));
        refused(() -> new Allowances(Double.NaN, 9, 0, Corner.POINTED, 0));
    }

    @Test
    void holesHaveRoomInTheEdgeAndBetweenOneAnother() {
        assertThatCode(() -> new Fasteners(6, 3.001, 6.001)).doesNotThrowAnyException();
        refused(() -> new Fasteners(0, 3, 6));
        refused(() -> new Fasteners(-1, 3, 6));
        refused(() -> new Fasteners(6, 3, 7));
        refused(() -> new Fasteners(6, 4, 6));
        refused(() -> new Fasteners(Double.NaN, 4, 7));
        refused(() -> new Fasteners(6, Double.NaN, 7));
        refused(() -> new Fasteners(6, 4, Double.NaN));
    }

    private static void refused(ThrowingCallable making) {
        assertThatIllegalArgumentException().isThrownBy(making);
    }
}
