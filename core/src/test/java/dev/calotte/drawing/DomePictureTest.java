package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.units.UnitSystem;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class DomePictureTest {

    private static final Parts PARTS = Parts.of(
            Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(2600))
                    .withKeep(new Keep.Rows(1, 2))),
            Joinery.nodeToNode());
    private static final Picture PICTURE = DomePicture.of("A dome", PARTS, UnitSystem.METRIC);

    @Test
    void theScaleBarIsInTheUnitsOfTheBrief() {
        assertThat(DomePicture.of("A dome", PARTS, UnitSystem.IMPERIAL).items())
                .filteredOn(Label.class::isInstance)
                .extracting(item -> ((Label) item).text())
                .contains("1' 0\"")
                .doesNotContain("1 m");
    }

    @Test
    void everyKindStandsInTheLegend() {
        assertThat(texts()).contains("P3L  30 panels", "P3R  30 panels", "P5  10 panels", "A dome", "1 m", "start ray");
    }

    @Test
    void twinsShareTheirColourAndDifferInTheirHatch() {
        List<Facet> facets = facets();
        Facet left = facet(facets, "P3L-");
        Facet right = facet(facets, "P3R-");
        assertThat(left.colour()).isEqualTo(right.colour()).isEqualTo(3);
        assertThat(left.hatch()).isEqualTo(Hatch.RISING);
        assertThat(right.hatch()).isEqualTo(Hatch.FALLING);
        assertThat(facet(facets, "P1-").hatch()).isEqualTo(Hatch.NONE);
    }

    @Test
    void onlyPanelsThatFaceTheEyeAreDrawnEachOnce() {
        List<String> marks =
                facets().stream().map(Facet::title).filter(t -> t.contains("-")).toList();
        assertThat(marks).doesNotHaveDuplicates().hasSizeBetween(80, 130);
    }

    @Test
    void everythingLiesOnThePaper() {
        for (Facet facet : facets()) {
            for (int i = 0; i < facet.xy().size(); i += 2) {
                assertThat(facet.xy().get(i)).isBetween(0.0, PICTURE.widthMm());
                assertThat(facet.xy().get(i + 1)).isBetween(0.0, PICTURE.heightMm());
            }
        }
        labels().forEach(label -> {
            assertThat(label.x()).isBetween(0.0, PICTURE.widthMm());
            assertThat(label.y()).isBetween(0.0, PICTURE.heightMm());
            assertThat(label.heightMm()).isGreaterThanOrEqualTo(2.5);
        });
    }

    @Test
    void fromAboveTheStartRayIsAtTwelve() {
        Camera plan = Camera.from(180, 90);
        assertThat(plan.upwards(Vector3D.PLUS_I)).isCloseTo(1, within(1e-12));
        assertThat(plan.across(Vector3D.PLUS_J)).isCloseTo(-1, within(1e-12));
        assertThat(plan.towards(Vector3D.PLUS_K)).isCloseTo(1, within(1e-12));
    }

    private static List<Facet> facets() {
        return PICTURE.items().stream()
                .filter(Facet.class::isInstance)
                .map(Facet.class::cast)
                .toList();
    }

    private static List<Label> labels() {
        return PICTURE.items().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    private static List<String> texts() {
        return labels().stream().map(Label::text).toList();
    }

    private static Facet facet(List<Facet> facets, String mark) {
        return facets.stream()
                .filter(f -> f.title().startsWith(mark))
                .findFirst()
                .orElseThrow();
    }

    /** The five panels of the crown leave five struts, which the eye sees a little from above. */
    @Test
    void anOpeningShowsTheStrutsThatItLeft() {
        Dome dome = PARTS.dome();
        List<Integer> near =
                dome.panels().stream().map(Panel::index).filter(i -> i < 5).toList();
        Dome kept = dome.withOpenings(List.of(new Opening("vent", near, false)));
        Dome gone = dome.withOpenings(List.of(new Opening("vent", near, true)));
        Picture open = DomePicture.of("A dome", Parts.of(kept, Joinery.nodeToNode()), UnitSystem.METRIC);
        Picture bare = DomePicture.of("A dome", Parts.of(gone, Joinery.nodeToNode()), UnitSystem.METRIC);
        assertThat(lines(open) - lines(PICTURE)).isEqualTo(5);
        assertThat(lines(bare)).isEqualTo(lines(PICTURE));
        assertThat(open.items().stream()
                        .filter(i -> i instanceof Facet f && f.title().startsWith("P1-1.")))
                .isEmpty();
    }

    private static long lines(Picture picture) {
        return picture.items().stream().filter(Picture.Line.class::isInstance).count();
    }

    @Test
    void nothingIsDrawnThatIsNotKnown() {
        for (Item item : PICTURE.items()) {
            assertThat(item).isInstanceOfAny(Facet.class, Label.class, Picture.Line.class);
        }
    }
}
