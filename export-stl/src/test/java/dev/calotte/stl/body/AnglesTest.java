package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Spoke;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;
import dev.calotte.solid.JigSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Angles are measured on the facets and compared with the positions of the dome's hubs. */
class AnglesTest {

    private static final double DEGREES = 1e-3;

    static Stream<Arguments> frames() {
        return Stream.of(
                Arguments.of(Domes.gapped(3, 45), Domes.TUBE),
                Arguments.of(Domes.gapped(2, 70), Domes.TIMBER),
                Arguments.of(Domes.gapped(4, 45), Domes.TUBE));
    }

    @ParameterizedTest
    @MethodSource("frames")
    void troughsPointWhereTheDomesStrutsDo(Parts parts, JigSpec spec) {
        PrintPlate plate = Domes.plate(parts, spec);
        for (Jig.Cradle jig : Domes.jigs(plate, Jig.Cradle.class)) {
            Hub hub = parts.dome().hubs().stream()
                    .filter(h -> parts.kindOf(h).mark().equals(jig.mark()))
                    .findFirst()
                    .orElseThrow();
            List<Vector3D> measured = directions(Bodies.of(jig, plate).get(0), jig);
            List<Vector3D> struts = struts(parts, hub);
            for (int i = 0; i < struts.size(); i++) {
                assertThat(angle(measured.get(i), Vector3D.PLUS_K))
                        .as(jig.mark() + " tilt " + i)
                        .isCloseTo(angle(struts.get(i), hub.position()), within(DEGREES));
                for (int j = 0; j < i; j++) {
                    assertThat(angle(measured.get(i), measured.get(j)))
                            .as(jig.mark() + " " + i + " to " + j)
                            .isCloseTo(angle(struts.get(i), struts.get(j)), within(DEGREES));
                }
            }
        }
    }

    private static List<Vector3D> struts(Parts parts, Hub hub) {
        Dome dome = parts.dome();
        List<Vector3D> struts = new ArrayList<>();
        for (Spoke spoke : parts.around(hub)) {
            Strut strut = dome.struts().get(spoke.strut());
            int other = strut.from() == hub.index() ? strut.to() : strut.from();
            struts.add(dome.hubs().get(other).position().subtract(hub.position()));
        }
        return struts;
    }

    /** Both halves, large enough that rounding to 1/4096 mm does not count: the inner one as the dome's struts lie seen from outside, the outer one as seen from inside. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void socketsPointWhereTheDomesStrutsDo(int frequency) {
        Parts parts = Domes.gapped(frequency, 45);
        PrintPlate plate = Domes.plate(parts, Domes.SOCKETS);
        for (Jig.Socket jig : Domes.jigs(plate, Jig.Socket.class)) {
            Hub hub = parts.dome().hubs().stream()
                    .filter(h -> jig.mark().equals("socket-" + parts.kindOf(h).mark()))
                    .findFirst()
                    .orElseThrow();
            List<Mesh> halves = Bodies.of(jig, plate);
            same(struts(parts, hub), hub.position(), sockets(halves.get(0), jig, 1), jig.mark());
            List<Vector3D> outer = sockets(halves.get(1), jig, -1).stream()
                    .map(v -> new Vector3D(v.getX(), -v.getY(), -v.getZ()))
                    .toList();
            same(struts(parts, hub), hub.position(), outer, jig.mark() + "-2");
        }
    }

    private static void same(List<Vector3D> struts, Vector3D up, List<Vector3D> measured, String mark) {
        for (int i = 0; i < struts.size(); i++) {
            assertThat(angle(measured.get(i), Vector3D.PLUS_K))
                    .as(mark + " tilt " + i)
                    .isCloseTo(angle(struts.get(i), up), within(DEGREES));
            for (int j = 0; j < i; j++) {
                assertThat(angle(measured.get(i), measured.get(j)))
                        .as(mark + " " + i + " to " + j)
                        .isCloseTo(angle(struts.get(i), struts.get(j)), within(DEGREES));
            }
        }
        // not mirrored: counter-clockwise from outside
        assertThat(measured.get(0).crossProduct(measured.get(1)).getZ())
                .as(mark)
                .isPositive();
    }

    /** Square to two facets of each round socket that stand across one another; the outer half lies on its head. */
    private static List<Vector3D> sockets(Mesh half, Jig.Socket jig, int sign) {
        List<Vector3D> directions = new ArrayList<>();
        for (Jig.Arm arm : jig.arms()) {
            Vector3D outwards = new Vector3D(StrictMath.cos(arm.angleRad()), sign * StrictMath.sin(arm.angleRad()), 0);
            Vector3D along = new Vector3D(
                    StrictMath.cos(arm.tiltRad()), outwards, -sign * StrictMath.sin(arm.tiltRad()), Vector3D.PLUS_K);
            List<Vector3D> normals = Sound.facets(half).stream()
                    .map(Sound::normal)
                    .filter(n -> n.getNorm() > 30)
                    .filter(n -> n.normalize().getZ() > 0.2 && n.normalize().getZ() < 0.9999)
                    .filter(n -> Math.abs(n.normalize().dotProduct(along)) < 1e-3)
                    .toList();
            directions.add(crossOf(normals, outwards));
        }
        return directions;
    }

    /**
     * Where each trough points: square to the normals of the two widest facets that look up and are not level, on either
     * side of a round trough; for a flat one, down the slope of its floor.
     */
    private static List<Vector3D> directions(Mesh mesh, Jig.Cradle jig) {
        List<Vector3D> directions = new ArrayList<>();
        for (Jig.Arm arm : jig.arms()) {
            double out = arm.angleRad() + jig.turnRad();
            Vector3D outwards = new Vector3D(StrictMath.cos(out), StrictMath.sin(out), 0);
            Vector3D along = new Vector3D(
                    StrictMath.cos(arm.tiltRad()), outwards, -StrictMath.sin(arm.tiltRad()), Vector3D.PLUS_K);
            List<Vector3D> normals = Sound.facets(mesh).stream()
                    .map(Sound::normal)
                    .filter(n -> n.getNorm() > 20)
                    .filter(n -> n.normalize().getZ() > 0.2 && n.normalize().getZ() < 0.9999)
                    .filter(n -> Math.abs(n.normalize().dotProduct(along)) < 1e-3)
                    .toList();
            directions.add(jig.strut().round() ? crossOf(normals, outwards) : slopeOf(normals, outwards));
        }
        return directions;
    }

    private static Vector3D crossOf(List<Vector3D> normals, Vector3D outwards) {
        Vector3D best = Vector3D.ZERO;
        for (Vector3D one : normals) {
            for (Vector3D other : normals) {
                Vector3D cross = one.normalize().crossProduct(other.normalize());
                best = cross.getNorm() > best.getNorm() ? cross : best;
            }
        }
        assertThat(best.getNorm()).isGreaterThan(0.5);
        Vector3D along = best.normalize();
        return along.dotProduct(outwards) > 0 ? along : along.negate();
    }

    private static Vector3D slopeOf(List<Vector3D> normals, Vector3D outwards) {
        Vector3D steepest = normals.stream()
                .filter(n -> n.dotProduct(outwards) > 0)
                .max(Comparator.comparingDouble(Vector3D::getNorm))
                .orElseThrow()
                .normalize();
        Vector3D level = new Vector3D(steepest.getX(), steepest.getY(), 0).normalize();
        double tilt = StrictMath.atan2(level.dotProduct(steepest), steepest.getZ());
        return new Vector3D(StrictMath.cos(tilt), level, -StrictMath.sin(tilt), Vector3D.PLUS_K);
    }

    private static double angle(Vector3D one, Vector3D other) {
        return StrictMath.toDegrees(Vector3D.angle(one, other));
    }

    /** From the finest domes that are built to a tetrahedron undivided, and a hollow edge. */
    @ParameterizedTest
    @CsvSource({
        "BEND, 7.305",
        "BEND, 11.64",
        "BEND, 31.717",
        "BEND, 54.736",
        "BEVEL, 35.264",
        "BEVEL, 69.095",
        "BEVEL, 84.125",
        "BEVEL, 91.85",
        "SADDLE, 70.529",
        "SADDLE, 138.19",
        "SADDLE, 168.24",
        "SADDLE, 183.7"
    })
    void gaugesShowTheirAngles(Jig.Use use, double degrees) {
        assertThat(measured(use, degrees)).anyMatch(angle -> Math.abs(angle - degrees) < DEGREES);
    }

    /** Angles between the long upright sides, as the use asks for them. */
    private static List<Double> measured(Jig.Use use, double degrees) {
        Jig.Gauge gauge = new Jig.Gauge("gauge", "", use, StrictMath.toRadians(degrees));
        PrintPlate plate = new PrintPlate("plate", "", 0.3, 2.4, List.of(gauge));
        List<Vector3D> sides = Sound.facets(Bodies.of(gauge, plate).get(0)).stream()
                .map(Sound::normal)
                .filter(n -> n.getNorm() > 150 && n.getZ() == 0)
                .toList();
        List<Double> angles = new ArrayList<>();
        for (Vector3D one : sides) {
            for (Vector3D other : sides) {
                double between = angle(one, other);
                double turn = one.crossProduct(other).getZ();
                angles.add(
                        switch (use) {
                            case BEND -> between;
                            case BEVEL -> 180 - between;
                            case SADDLE -> turn < 0 ? 180 + between : 180 - between;
                        });
            }
        }
        return angles;
    }

    @Test
    void mitreBlocksEndInThePlaneOfTheCut() {
        Parts parts = Domes.mitred(3);
        PrintPlate plate = Domes.plate(parts, Domes.TUBE);
        for (Jig.Mitre jig : Domes.jigs(plate, Jig.Mitre.class)) {
            Vector3D cut = top(Bodies.of(jig, plate).get(0));
            // the blade's tilt is the angle between the cut and the plane square to the face the rail lies on
            assertThat(StrictMath.toDegrees(StrictMath.asin(cut.getY())))
                    .isCloseTo(StrictMath.toDegrees(jig.bladeTiltRad()), within(DEGREES));
            double turned = StrictMath.toDegrees(StrictMath.atan2(cut.getX(), cut.getZ()));
            double wanted = StrictMath.toDegrees(jig.gaugeRad());
            assertThat(turned).isCloseTo(jig.start() ? -wanted : wanted, within(DEGREES));
        }
    }

    /** The plane through three outer corners of the top: walls are too thin to tell it from one of their facets. */
    private static Vector3D top(Mesh mesh) {
        double right = mostOfBlock(mesh, Vector3D::getX);
        double away = mostOfBlock(mesh, Vector3D::getY);
        // the rib stands out by 2.4 mm before the long wall
        double near = Sound.facets(mesh).stream()
                .flatMap(Stream::of)
                .filter(v -> v.getX() == 0)
                .mapToDouble(Vector3D::getY)
                .min()
                .orElseThrow();
        Vector3D corner = highest(mesh, 0, near);
        return highest(mesh, right, near)
                .subtract(corner)
                .crossProduct(highest(mesh, 0, away).subtract(corner))
                .normalize();
    }

    /** Above the plate that bears the mark. */
    private static double mostOfBlock(Mesh mesh, ToDoubleFunction<Vector3D> coordinate) {
        return Sound.facets(mesh).stream()
                .flatMap(Stream::of)
                .filter(v -> v.getZ() > 5)
                .mapToDouble(coordinate)
                .max()
                .orElseThrow();
    }

    private static Vector3D highest(Mesh mesh, double x, double y) {
        return Sound.facets(mesh).stream()
                .flatMap(Stream::of)
                .filter(v -> v.getX() == x && v.getY() == y)
                .max(Comparator.comparingDouble(Vector3D::getZ))
                .orElseThrow();
    }
}
