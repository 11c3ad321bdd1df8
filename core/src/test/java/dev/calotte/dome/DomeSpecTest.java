package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import org.junit.jupiter.api.Test;

class DomeSpecTest {

    private static final DomeSpec SPEC = DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(2), Size.radius(10));

    @Test
    void aSpecificationBeginsAsAWholeSphereWithACornerUp() {
        assertThat(SPEC)
                .isEqualTo(new DomeSpec(
                        Solid.OCTAHEDRON,
                        Breakdown.of(2),
                        Spacing.CHORD,
                        Fitting.DEFAULT,
                        Up.VERTEX,
                        new Keep.Whole(),
                        Base.AS_IS,
                        Size.radius(10)));
    }

    @Test
    void copiesDifferInOneThing() {
        Keep rows = new Keep.Rows(1, 2);
        Fitting fitting = new Fitting(Fitting.Goal.FEW_KINDS, 1.5);
        DomeSpec copy = SPEC.withBreakdown(Breakdown.of(3))
                .withSpacing(Spacing.ARC)
                .withFitting(fitting)
                .withUp(Up.EDGE)
                .withKeep(rows)
                .withBase(Base.LEVEL)
                .withSize(Size.radius(7));
        assertThat(copy)
                .isEqualTo(new DomeSpec(
                        Solid.OCTAHEDRON,
                        Breakdown.of(3),
                        Spacing.ARC,
                        fitting,
                        Up.EDGE,
                        rows,
                        Base.LEVEL,
                        Size.radius(7)));
        assertThat(rows).hasToString("1/2");
    }

    @Test
    void aDomeKeepsItsSpecification() {
        assertThat(Dome.of(SPEC).spec()).isEqualTo(SPEC);
        assertThat(Dome.of(SPEC).radiusMm()).isEqualTo(10);
    }

    @Test
    void whatIsKeptIsGivenAsItIsBuilt() {
        DomeSpec ico = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(10));
        assertThat(Dome.of(ico.withKeep(new Keep.Rows(5, 8))).spec().keep()).isEqualTo(new Keep.Rows(5, 9));
        assertThat(Dome.of(ico.withKeep(new Keep.Rows(6, 9))).spec().keep()).isEqualTo(new Keep.Rows(2, 3));
        assertThat(Dome.of(ico.withKeep(new Keep.Rows(9, 9))).spec().keep()).isEqualTo(new Keep.Whole());
    }

    @Test
    void listsOfADomeEndWhereTheyEnd() {
        Dome dome = Dome.of(SPEC);
        int size = dome.hubs().size();
        assertThatThrownBy(() -> dome.hubs().get(size)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> dome.hubs().get(-1)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> dome.hubs().remove(0)).isInstanceOf(UnsupportedOperationException.class);
        assertThat(dome.hubs().get(0).position().getZ()).isEqualTo(10);
    }
}
