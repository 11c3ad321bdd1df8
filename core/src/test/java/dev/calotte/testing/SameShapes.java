package dev.calotte.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;

/** Compares lines that were read with those that were written. */
public final class SameShapes {

    private SameShapes() {}

    /** The shapes of a drawing as files have them: by operation, inside it by part. */
    public static List<Shape> inOrder(Drawing drawing) {
        List<Shape> all = new ArrayList<>();
        for (Operation operation : Operation.values()) {
            drawing.parts().stream()
                    .flatMap(part -> part.shapes().stream())
                    .filter(shape -> shape.operation() == operation)
                    .forEach(all::add);
        }
        return all;
    }

    /** Asserts that each is the other, within what rounding costs. */
    public static void assertSame(List<Shape> read, List<Shape> written, double apartMm) {
        assertThat(read).hasSameSizeAs(written);
        for (int i = 0; i < read.size(); i++) {
            assertSame(read.get(i), written.get(i), apartMm);
        }
    }

    private static void assertSame(Shape read, Shape written, double apartMm) {
        assertThat(read.operation()).isEqualTo(written.operation());
        assertThat(read).hasSameClassAs(written);
        if (written instanceof Circle circle) {
            Circle other = (Circle) read;
            assertThat(new double[] {other.xMm(), other.yMm(), other.radiusMm()})
                    .containsExactly(new double[] {circle.xMm(), circle.yMm(), circle.radiusMm()}, within(apartMm));
        } else {
            assertSame((Polyline) read, (Polyline) written, apartMm);
        }
    }

    private static void assertSame(Polyline read, Polyline written, double apartMm) {
        boolean returns = !written.isClosed() && written.size() > 3 && meets(written, apartMm);
        assertThat(read.isClosed()).isEqualTo(written.isClosed() || returns);
        assertThat(read.size()).isEqualTo(written.size() - (returns ? 1 : 0));
        for (int i = 0; i < read.size(); i++) {
            assertThat(read.x(i)).isCloseTo(written.x(i), within(apartMm));
            assertThat(read.y(i)).isCloseTo(written.y(i), within(apartMm));
            if (i + 1 < read.size() || read.isClosed()) {
                assertThat(middle(read, i)).containsExactly(middle(written, i), within(20 * apartMm));
            }
        }
    }

    /** A line that ends where it began is read as a closed one. */
    private static boolean meets(Polyline path, double apartMm) {
        int last = path.size() - 1;
        return Math.abs(path.x(last) - path.x(0)) + Math.abs(path.y(last) - path.y(0)) < apartMm;
    }

    /** The middle of a side, straight or not. */
    private static double[] middle(Polyline path, int side) {
        int next = (side + 1) % path.size();
        return path.arc(side).map(SameShapes::middle).orElseGet(() ->
                new double[] {(path.x(side) + path.x(next)) / 2, (path.y(side) + path.y(next)) / 2});
    }

    private static double[] middle(Arc arc) {
        double angle = arc.startRad() + arc.sweepRad() / 2;
        return new double[] {arc.x(angle), arc.y(angle)};
    }
}
