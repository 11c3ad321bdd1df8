package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class TriangleNetTest {

    private static final int[] TETRAHEDRON = {0, 1, 2, 0, 2, 3, 0, 3, 1, 1, 3, 2};
    private static final int[] FAN = {0, 1, 2, 0, 2, 3, 0, 3, 4};

    @Test
    void halvesRunRoundTheirTriangle() {
        TriangleNet net = new TriangleNet(4, TETRAHEDRON);
        assertThat(new int[] {TriangleNet.after(3), TriangleNet.after(4), TriangleNet.after(5)})
                .containsExactly(4, 5, 3);
        assertThat(new int[] {TriangleNet.before(3), TriangleNet.before(4), TriangleNet.before(5)})
                .containsExactly(5, 3, 4);
        assertThat(new int[] {net.start(3), net.end(3), net.start(5), net.end(5)})
                .containsExactly(0, 2, 3, 0);
    }

    @Test
    void edgesAreNumberedAsTheyFirstCome() {
        TriangleNet net = new TriangleNet(4, TETRAHEDRON);
        assertThat(new int[] {net.vertexCount(), net.edgeCount(), net.triangleCount()})
                .containsExactly(4, 6, 4);
        assertThat(new int[] {net.edge(0), net.edge(1), net.edge(2), net.edge(3), net.edge(4), net.edge(5)})
                .containsExactly(0, 1, 2, 2, 3, 4);
        assertThat(new int[] {net.half(0), net.half(1), net.half(2), net.half(3), net.half(4), net.half(5)})
                .containsExactly(0, 1, 2, 4, 5, 7);
    }

    @Test
    void twinsRunTheOtherWay() {
        TriangleNet net = new TriangleNet(4, TETRAHEDRON);
        for (int half = 0; half < TETRAHEDRON.length; half++) {
            int twin = net.twin(half);
            assertThat(net.twin(twin)).isEqualTo(half).isNotEqualTo(twin);
            assertThat(net.start(twin)).isEqualTo(net.end(half));
            assertThat(net.end(twin)).isEqualTo(net.start(half));
            assertThat(net.edge(twin)).isEqualTo(net.edge(half));
        }
    }

    @Test
    void turningVisitsTheNeighboursCounterClockwise() {
        TriangleNet net = new TriangleNet(4, TETRAHEDRON);
        int first = net.spoke(0);
        int second = net.turn(first);
        int third = net.turn(second);
        assertThat(new int[] {net.end(first), net.end(second), net.end(third)}).containsExactly(1, 2, 3);
        assertThat(net.turn(third)).isEqualTo(first);
        assertThat(net.isOpen(0)).isFalse();
    }

    @Test
    void openFanIsWalkedFromItsOpenSide() {
        TriangleNet net = new TriangleNet(5, FAN);
        int first = net.spoke(0);
        assertThat(net.twin(first)).isEqualTo(-1);
        assertThat(net.end(first)).isEqualTo(1);
        int last = net.turn(net.turn(first));
        assertThat(net.end(last)).isEqualTo(3);
        assertThat(net.turn(last)).isEqualTo(-1);
        assertThat(net.isOpen(0)).isTrue();
        assertThat(net.edgeCount()).isEqualTo(7);
    }

    @Test
    void bordersRunRound() {
        TriangleNet net = new TriangleNet(5, FAN);
        int[] ring = new int[5];
        for (int i = 1; i < 5; i++) {
            ring[i] = net.end(net.spoke(ring[i - 1]));
        }
        assertThat(ring).containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void edgeUsedTwiceTheSameWayIsRefused() {
        refused(4, "from 0 to 1 is used twice the same way", 0, 1, 2, 0, 1, 3);
    }

    @Test
    void edgeOfThreeTrianglesIsRefused() {
        refused(5, "is used twice the same way", 0, 1, 2, 1, 0, 3, 1, 0, 4);
    }

    @Test
    void edgeFromAVertexToItselfIsRefused() {
        refused(2, "from 0 to 0", 0, 0, 1);
    }

    @Test
    void unusedVertexIsRefused() {
        refused(4, "vertex 3", 0, 1, 2);
        refused(4, "vertex 0", 1, 2, 3);
    }

    @Test
    void trianglesThatOnlyTouchAtAVertexAreRefused() {
        refused(5, "vertex 0 do not form a single fan", 0, 1, 2, 0, 3, 4);
    }

    private static void refused(int vertexCount, String message, int... corners) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TriangleNet(vertexCount, corners))
                .withMessageContaining(message);
    }
}
