package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Volumes against those computed by hand from the measures. */
class BlockShapeTest {

    private static Mesh body(Jig jig) {
        Mesh mesh = Bodies.of(jig, new PrintPlate("plate", "", 0.3, 2.4, List.of(jig)))
                .get(0);
        Sound.check(mesh);
        return mesh;
    }

    /** A tray of 36.6 by 58.5 in walls of 2.4 on three sides, 3 deep over 10, and a hole round which 32 sides are laid. */
    @Test
    void aDrillGuideIsATrayWithAHole() {
        double hole = 32 * 4.45 * 4.45 * StrictMath.tan(Math.PI / 32);
        double wanted = (58.5 + 2.4) * (36.6 + 4.8) * 13 - 58.5 * 36.6 * 3 - 10 * hole;
        assertThat(Sound.volume(body(new Jig.Drill("drill", "", 36, 2.5, 8.5, 20))))
                .isCloseTo(wanted, within(1e-4 * wanted));
    }

    /** A prism under a plane is as large as its base times the height over the base's centroid. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aMitreBlockIsAChannelUnderThePlaneOfTheCut(boolean start) {
        double tilt = StrictMath.toRadians(28);
        double turn = StrictMath.toRadians(6);
        double wide = 95 + 0.6 + 4.8;
        double deep = 27 + 2.4;
        double across = StrictMath.tan(turn);
        double away = StrictMath.tan(tilt) / StrictMath.cos(turn);
        double back = wide * 2.4;
        double sides = 2 * 27 * 2.4;
        double centroidY = (back * 1.2 + sides * (2.4 + 13.5)) / (back + sides);
        double centroidHeight = 40 + across * wide / 2 + away * (deep - centroidY);
        Mesh mesh = body(new Jig.Mitre("mitre-28.0", "", 95, 45, start, tilt, turn));
        double plate = (new Letters(6, Plane.level(0)).widthMm("28.0") + 4) * deep * 3;
        // the rib is a triangle 4.8 wide and 2.4 deep at the arris, on either side the same distance from the longer
        // edge
        double ribHeight = 40 + across * (wide - 2.7) + away * (deep + 0.8);
        double wanted =
                (back + sides) * centroidHeight + 2.4 * 2.4 * ribHeight + plate + 0.8 * Sound.levelMm2(mesh, 3.8);
        assertThat(Sound.levelMm2(mesh, 3.8)).as("a mark").isPositive();
        assertThat(Sound.volume(mesh)).isCloseTo(wanted, within(1e-4 * wanted));
    }

    /** Flat troughs over sills: walls reach the strut's axis and the clearance, the later over the earlier. */
    @Test
    void aTestOfTheFitHasATroughForEachClearance() {
        Mesh mesh = body(new Jig.Fit("fit", "", StrutSection.rectangle(30, 20), List.of(0.2, 0.4)));
        double width = 30.4 + 30.8 + 3 * 2.4;
        double walls = 15 * 2.4 * (13.2 + 13.4 + 13.4);
        double wanted = walls + 15 * (30.4 + 30.8) * 3 + 10 * width * 3 + 0.8 * Sound.levelMm2(mesh, 3.8);
        assertThat(Sound.levelMm2(mesh, 3.8)).isPositive();
        assertThat(Sound.volume(mesh)).isCloseTo(wanted, within(1e-4 * wanted));
    }
}
