package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Wireframe.Layer;
import dev.calotte.document.Wireframe.Sort;
import dev.calotte.parts.Parts;
import dev.calotte.solid.FrameWires;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final List<Layer> LAYERS =
            FrameWires.of("dome", CheckedDomes.ICOSAHEDRON).layers();

    private static List<String> found(List<Layer> layers) {
        return Found.by(findings -> WireCheck.of(DOME, layers, 2e-6, findings));
    }

    private static double[] xyz(Layer layer) {
        double[] xyz = new double[3 * layer.sort().corners() * layer.size()];
        for (int i = 0; i < xyz.length; i++) {
            int corner = i / 3;
            xyz[i] = layer.at(
                    corner / layer.sort().corners(), corner % layer.sort().corners(), i % 3);
        }
        return xyz;
    }

    private static Layer changed(Layer layer, UnaryOperator<double[]> change) {
        return new Layer(layer.name(), layer.sort(), change.apply(xyz(layer)));
    }

    private static List<Layer> changed(String name, UnaryOperator<double[]> change) {
        return LAYERS.stream()
                .map(layer -> layer.name().equals(name) ? changed(layer, change) : layer)
                .toList();
    }

    private static String firstStrut() {
        return DOME.struts().stream()
                .filter(strut -> strut.kind().equals("S1"))
                .findFirst()
                .orElseThrow()
                .mark();
    }

    @ParameterizedTest
    @MethodSource("dev.calotte.check.CheckedDomes#all")
    void nothingIsFoundInARightFrame(Parts parts) {
        List<Layer> layers = FrameWires.of("dome", parts).layers();
        assertThat(Found.list(findings -> WireCheck.of(Records.dome(parts), layers, 2e-6, findings)))
                .isEmpty();
    }

    @Test
    void linesMayRunEitherWay() {
        assertThat(found(changed("STRUTS-S1", xyz -> {
                    double[] back = new double[xyz.length];
                    for (int i = 0; i < xyz.length; i++) {
                        back[i] = xyz[i / 6 * 6 + (i + 3) % 6];
                    }
                    return back;
                })))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {25.4, 1.001, 0.5})
    void aScaledFrameIsFound(double scale) {
        assertThat(found(LAYERS.stream()
                        .map(layer -> changed(
                                layer,
                                xyz -> Arrays.stream(xyz).map(mm -> scale * mm).toArray()))
                        .toList()))
                .containsExactly("SCALED");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-5, -30})
    void aStrutElsewhereIsFound(double mm) {
        assertThat(found(changed("STRUTS-S1", xyz -> {
                    xyz[4] += mm;
                    return xyz;
                })))
                .containsExactly("MISSING " + firstStrut(), "FOREIGN layer STRUTS-S1");
    }

    @Test
    void aStrutThatIsGoneIsFound() {
        assertThat(found(changed("STRUTS-S1", xyz -> Arrays.copyOfRange(xyz, 6, xyz.length))))
                .containsExactly("MISSING " + firstStrut());
    }

    @Test
    void whatIsThereTwiceIsFound() {
        List<Finding> found = Found.list(findings -> WireCheck.of(
                DOME,
                changed("PANELS-P1", xyz -> Arrays.copyOf(Arrays.copyOf(xyz, xyz.length), xyz.length + 9)),
                2e-6,
                findings));
        assertThat(found).singleElement().satisfies(finding -> {
            assertThat(finding.fault()).isEqualTo(Fault.FOREIGN);
            assertThat(finding.place()).isEqualTo("layer PANELS-P1");
            assertThat(finding.what()).startsWith("what stands at x 0, y 0, z 0 ");
        });
    }

    @Test
    void aPanelThatIsTurnedIsFound() {
        String first = DOME.panels().stream()
                .filter(panel -> panel.kind().equals("P1"))
                .findFirst()
                .orElseThrow()
                .mark();
        assertThat(found(changed("PANELS-P1", xyz -> {
                    double[] turned = xyz.clone();
                    System.arraycopy(xyz, 3, turned, 6, 3);
                    System.arraycopy(xyz, 6, turned, 3, 3);
                    return turned;
                })))
                .containsExactly("MISSING " + first, "FOREIGN layer PANELS-P1");
    }

    @Test
    void aLayerOfAnotherSortOrNameIsFound() {
        List<Layer> points = LAYERS.stream()
                .map(layer ->
                        layer.name().equals("STRUTS-S1") ? new Layer(layer.name(), Sort.POINTS, xyz(layer)) : layer)
                .toList();
        long struts = DOME.struts().stream().filter(s -> s.kind().equals("S1")).count();
        assertThat(found(points))
                .hasSize((int) (3 * struts))
                .contains("MISSING " + firstStrut(), "FOREIGN layer STRUTS-S1");
        List<Layer> more = new ArrayList<>(LAYERS);
        more.add(new Layer("NOTES", Sort.LINES, 0, 0, 0, 1, 1, 1));
        assertThat(found(more)).containsExactly("FOREIGN layer NOTES");
    }

    @Test
    void anEmptyFileMissesEverything() {
        assertThat(found(List.of()))
                .hasSize(DOME.hubs().size()
                        + DOME.struts().size()
                        + DOME.panels().size())
                .contains("MISSING " + DOME.hubs().get(0).mark());
    }
}
