package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.testing.Cases;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lines as other programs leave them: in runs that follow each other, each either way, in any order, not quite meeting. */
class JoiningTest {

    /** Ends lie so far beside the corner at most, so that two of them are less than 0.001 mm apart along each axis. */
    private static final double BESIDE = 0.00045;

    /** The corners of a star about a middle left of and below the origin. */
    private static double[] star(Random random, int corners) {
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = (c + 0.5 * random.nextDouble()) * 2 * Math.PI / corners;
            double radius = 20 + 30 * random.nextDouble();
            xy[2 * c] = radius * StrictMath.cos(angle) - 10;
            xy[2 * c + 1] = radius * StrictMath.sin(angle) - 10;
        }
        return xy;
    }

    private static String line(double[] xy, int from, int to, Random random) {
        double[] ends = {xy[2 * from], xy[2 * from + 1], xy[2 * to], xy[2 * to + 1]};
        for (int i = 0; i < ends.length; i++) {
            ends[i] += BESIDE * (2 * random.nextDouble() - 1);
        }
        return "0,LINE,8,A,10," + ends[0] + ",20," + ends[1] + ",11," + ends[2] + ",21," + ends[3];
    }

    /** The first so many sides in runs, every second one backwards, in an order left to chance. */
    private static String runs(double[] xy, int sides, Random random) {
        List<List<String>> runs = new ArrayList<>();
        int corners = xy.length / 2;
        for (int side = 0; side < sides; ) {
            int end = Math.min(sides, side + 1 + random.nextInt(4));
            boolean back = random.nextBoolean();
            List<String> run = new ArrayList<>();
            for (; side < end; side++) {
                int next = (side + 1) % corners;
                run.add(back ? line(xy, next, side, random) : line(xy, side, next, random));
            }
            if (back) {
                Collections.reverse(run);
            }
            runs.add(run);
        }
        Collections.shuffle(runs, random);
        return String.join(",", runs.stream().flatMap(List::stream).toList());
    }

    private static Polyline only(String entities) {
        try {
            List<DxfOutlines.Outline> all = read(entities);
            assertThat(all).hasSize(1);
            return (Polyline) all.get(0).shape();
        } catch (IOException refused) {
            throw new AssertionError(refused);
        }
    }

    private static List<DxfOutlines.Outline> read(String entities) throws IOException {
        String file = "0,SECTION,2,ENTITIES," + entities + ",0,ENDSEC,0,EOF,";
        byte[] bytes = file.replace(',', '\n').getBytes(StandardCharsets.US_ASCII);
        return DxfOutlines.read(new ByteArrayInputStream(bytes)).all();
    }

    /** At which corner of the star this place is; -1 if at none. */
    private static int corner(double[] xy, double x, double y) {
        for (int c = 0; c < xy.length / 2; c++) {
            if (Math.abs(xy[2 * c] - x) <= BESIDE && Math.abs(xy[2 * c + 1] - y) <= BESIDE) {
                return c;
            }
        }
        return -1;
    }

    /** Each corner after its neighbour, all the way one way round. */
    private static void assertInOrder(Polyline path, double[] xy) {
        int corners = xy.length / 2;
        int way = Math.floorMod(corner(xy, path.x(1), path.y(1)) - corner(xy, path.x(0), path.y(0)), corners);
        assertThat(way).isIn(1, corners - 1);
        for (int i = 0; i < path.size(); i++) {
            int here = corner(xy, path.x(i), path.y(i));
            assertThat(here).isEqualTo(Math.floorMod(corner(xy, path.x(0), path.y(0)) + i * way, corners));
        }
    }

    @Test
    void sidesInAnyOrderAndDirectionCloseToOneOutline() {
        Cases.each(80, (random, size) -> {
            double[] xy = star(random, 3 + size % 12);
            Polyline path = only(runs(xy, xy.length / 2, random));
            assertThat(path.isClosed()).isTrue();
            assertThat(path.size()).isEqualTo(xy.length / 2);
            assertInOrder(path, xy);
        });
    }

    @Test
    void whereOneSideIsMissingTheRestIsOneOpenLine() {
        Cases.each(80, (random, size) -> {
            double[] xy = star(random, 4 + size % 12);
            int corners = xy.length / 2;
            Polyline path = only(runs(xy, corners - 1, random));
            assertThat(path.isClosed()).isFalse();
            assertThat(path.size()).isEqualTo(corners);
            assertInOrder(path, xy);
            assertThat(List.of(corner(xy, path.x(0), path.y(0)), corner(xy, path.x(corners - 1), path.y(corners - 1))))
                    .containsExactlyInAnyOrder(0, corners - 1);
        });
    }

    /** Wherever the grid lies that ends are looked up in. */
    @Test
    void endsMeetAThousandthApartAndNoFurtherAlongEitherAxis() throws IOException {
        Random random = new Random(3);
        for (int n = 0; n < 40; n++) {
            double x = 100 * random.nextDouble() - 50;
            double y = 100 * random.nextDouble() - 50;
            int alongX = n % 3 - 1;
            int alongY = n / 3 % 3 - 1;
            String between = "0,CIRCLE,8,B,10,0,20,0,40,1";
            assertThat(read(two(x, y, 0.00099 * alongX, 0.00099 * alongY, between)))
                    .hasSize(2);
            int open = alongX == 0 && alongY == 0 ? 2 : 3;
            assertThat(read(two(x, y, 0.00101 * alongX, 0.00101 * alongY, between)))
                    .hasSize(open);
        }
    }

    /** Two lines, the second begins beside the end of the first; a third keeps them from following each other. */
    private static String two(double x, double y, double dx, double dy, String between) {
        return "0,LINE,8,A,10," + (x - 70) + ",20," + (y + 9) + ",11," + x + ",21," + y + "," + between
                + ",0,LINE,8,A,10," + (x + dx) + ",20," + (y + dy) + ",11," + (x + 60) + ",21," + (y + 5);
    }

    @Test
    void aThousandthIsOfAMillimetreWhateverTheUnit() throws IOException {
        String inches = "0,SECTION,2,HEADER,9,$INSUNITS,70,1,0,ENDSEC,";
        String near = "0,LINE,8,A,10,0,20,0,11,1,21,0,0,LINE,8,A,10,1.00003,20,0,11,2,21,1";
        String far = "0,LINE,8,A,10,0,20,0,11,1,21,0,0,LINE,8,A,10,1.00005,20,0,11,2,21,1";
        assertThat(file(inches, near)).hasSize(1);
        assertThat(file(inches, far)).hasSize(2);
    }

    private static List<DxfOutlines.Outline> file(String header, String entities) throws IOException {
        String file = header + "0,SECTION,2,ENTITIES," + entities + ",0,ENDSEC,0,EOF,";
        return DxfOutlines.read(new ByteArrayInputStream(file.replace(',', '\n').getBytes(StandardCharsets.US_ASCII)))
                .all();
    }

    @Test
    void anArcThatEndsWhereItBeginsIsACircle() throws IOException {
        assertThat(read("0,ARC,8,A,10,3,20,4,40,5,50,30,51,390"))
                .singleElement()
                .satisfies(outline -> assertThat(outline.shape()).isInstanceOfSatisfying(Circle.class, circle -> {
                    assertThat(circle.xMm()).isEqualTo(3);
                    assertThat(circle.radiusMm()).isEqualTo(5);
                }));
    }
}
