package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.parts.StrutKind;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Offset;

class TotalsTableTest {

    private static final double R = Row.RADIUS_MM;

    @Table("totals")
    void surfaceAndVolumeAgree(Row row) {
        Dome dome = row.dome();
        double area = dome.measures().surfaceAreaMm2() / R / R;
        double volume = dome.measures().volumeMm3() / R / R / R;
        assertThat(area).isCloseTo(row.number("panel_area_total"), Row.LENGTH);
        assertThat(area / (4 * Math.PI)).isCloseTo(row.number("area_over_sphere"), Row.LENGTH);
        assertThat(volume).isCloseTo(row.number("volume"), Row.LENGTH);
        assertThat(volume / (4 * Math.PI / 3)).isCloseTo(row.number("volume_over_ball"), Row.LENGTH);
    }

    @Table("totals")
    void edgesBendAsMuchInAll(Row row) {
        List<Strut> struts = row.dome().struts();
        double bend = struts.stream()
                .mapToDouble(s -> s.lengthMm() / R * (Math.PI - s.dihedralRad().orElseThrow()) / 2)
                .sum();
        double largest = struts.stream()
                .mapToDouble(s -> Math.toDegrees(s.dihedralRad().orElseThrow()))
                .max()
                .orElseThrow();
        assertThat(bend).isCloseTo(row.number("mean_curvature_integral"), Row.LENGTH);
        assertThat(largest).isCloseTo(row.number("largest_dihedral_deg"), Row.DEGREES);
        assertThat(largest < 180 - 1e-6)
                .isEqualTo(row.value().required("locally_convex").asBoolean());
    }

    @Table("totals")
    void longestAndNearestAgree(Row row) {
        List<StrutKind> kinds = row.parts().strutKinds();
        assertThat(kinds.get(kinds.size() - 1).lengthMm() / kinds.get(0).lengthMm())
                .isCloseTo(row.number("longest_over_shortest_strut"), Row.LENGTH);
        assertThat(nearestPlane(row.dome()) / R)
                .isCloseTo(row.number("smallest_distance_centre_to_panel_plane"), Row.LENGTH);
    }

    private static double nearestPlane(Dome dome) {
        return dome.panels().stream()
                .map(panel -> panel.hubs().stream()
                        .map(i -> dome.hubs().get(i).position())
                        .toList())
                .mapToDouble(p -> normal(p).dotProduct(p.get(0)))
                .min()
                .orElseThrow();
    }

    private static Vector3D normal(List<Vector3D> p) {
        return p.get(1)
                .subtract(p.get(0))
                .crossProduct(p.get(2).subtract(p.get(0)))
                .normalize();
    }

    @Table("area-convergence")
    void areaGrowsToTheSpheres(Row row) {
        double[] deficits = new double[17];
        for (JsonNode known : row.value().required("rows")) {
            int v = known.required("v").asInt();
            double area = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(v), Size.radius(1)))
                            .measures()
                            .surfaceAreaMm2()
                    / (4 * Math.PI);
            deficits[v] = 1 - area;
            assertThat(area).isCloseTo(known.required("area_over_sphere").asDouble(), Row.LENGTH);
            assertThat(deficits[v] * v * v)
                    .isCloseTo(known.required("deficit_times_v2").asDouble(), Row.LENGTH);
        }
        assertThat(deficits[8] / deficits[16]).isCloseTo(row.number("deficit_ratio_8_to_16"), Row.LENGTH);
    }

    @Table("radius-from-longest-strut")
    void longestStrutGivesTheRadius(Row row) {
        double longest = row.input("longest_strut").asDouble();
        Dome dome = Dome.of(row.spec().withSize(new Size(Size.Measure.LONGEST_STRUT, longest)));
        assertThat(dome.radiusMm())
                .isCloseTo(row.value().asDouble(), within(row.value().asDouble()));
    }

    /** The value was printed with twelve digits. */
    private static Offset<Double> within(double value) {
        return Offset.offset(1e-11 * value);
    }
}
