package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What an error in the length of struts does to the shape.
 *
 * <p>A strut rises from the plane that touches the sphere at a hub by its axial angle. A hub that moves along its radius
 * by w therefore makes its struts longer by w sin(axial angle), and struts that are all wrong by e push it out or in by
 * e / sin(axial angle). A regular ring of B sides has the radius of a side over 2 sin(180° / B), so sides that are all
 * wrong by e make it wrong by e / (2 sin(180° / B)). Both derived here, for small errors; a real frame spreads errors
 * over several hubs.
 *
 * <pre>{@code
 * Accuracy.Dimple first = Accuracy.of(parts, 1).dimples().get(0);
 * }</pre>
 *
 * @param toleranceMm the error in the length of a strut
 * @param dimples what it does at a hub, for each kind of strut
 * @param baseRadiusMm what it does to the radius of the base ring if every base strut has it; absent for a whole sphere
 */
public record Accuracy(double toleranceMm, List<Dimple> dimples, OptionalDouble baseRadiusMm) {

    /**
     * Copies the list.
     *
     * @param toleranceMm the error in the length of a strut
     * @param dimples what it does at a hub
     * @param baseRadiusMm what it does to the base ring
     */
    public Accuracy {
        dimples = List.copyOf(dimples);
    }

    /**
     * How far a hub stands out or in whose struts are all of a kind and all wrong.
     *
     * @param mark the mark of the kind of strut
     * @param factor how many times larger than the error of the struts
     * @param heightMm for the tolerance
     */
    public record Dimple(String mark, double factor, double heightMm) {}

    /**
     * Works out what errors do.
     *
     * @param parts the parts of the dome
     * @param toleranceMm the error in the length of a strut, 0 or more
     * @return the figures
     */
    public static Accuracy of(Parts parts, double toleranceMm) {
        List<Dimple> dimples = parts.strutKinds().stream()
                .map(kind -> dimple(kind, toleranceMm))
                .toList();
        return new Accuracy(toleranceMm, dimples, baseRadius(parts.dome().whole(), toleranceMm));
    }

    private static Dimple dimple(StrutKind kind, double toleranceMm) {
        double factor = 1 / StrictMath.sin(kind.axialAngleRad());
        return new Dimple(kind.mark(), factor, factor * toleranceMm);
    }

    private static OptionalDouble baseRadius(Dome whole, double toleranceMm) {
        int sides = whole.baseRing().size();
        return sides == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(toleranceMm / (2 * StrictMath.sin(Math.PI / sides)));
    }
}
