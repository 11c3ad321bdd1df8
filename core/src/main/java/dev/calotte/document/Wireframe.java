package dev.calotte.document;

import java.util.List;

/**
 * Points, lines and triangles in space, in layers.
 *
 * <pre>{@code
 * double[] fromTo = {0, 0, 2500, 4000, 0, 2500};
 * List<Wireframe.Layer> layers = List.of(new Wireframe.Layer("RIDGE", Wireframe.Sort.LINES, fromTo));
 * Exporters.installed().write(new Wireframe("ridge", "A ridge", layers), Path.of("ridge.dxf"));
 * }</pre>
 *
 * @param name where the file belongs
 * @param title what it shows
 * @param layers the layers, each of one sort
 */
public record Wireframe(String name, String title, List<Layer> layers) implements Document {

    /** What a layer holds. */
    public enum Sort {
        /** Single points. */
        POINTS(1),
        /** Straight lines from one point to another. */
        LINES(2),
        /** Triangles, counter-clockwise seen from outside. */
        FACES(3);

        private final int corners;

        Sort(int corners) {
            this.corners = corners;
        }

        /**
         * How many points one element has.
         *
         * @return 1, 2 or 3
         */
        public int corners() {
            return corners;
        }
    }

    /** Elements of one sort that belong together. */
    public static final class Layer {

        private final String name;
        private final Sort sort;
        private final double[] xyz;

        /**
         * Makes a layer.
         *
         * @param name up to 31 of the characters {@code A-Z 0-9 _ -}
         * @param sort what it holds
         * @param xyz x, y and z of each point of each element, in millimetres
         * @throws IllegalArgumentException if the name has other characters or the points do not make whole elements
         */
        public Layer(String name, Sort sort, double... xyz) {
            if (!name.matches("[A-Z0-9_-]{1,31}")) {
                throw new IllegalArgumentException("no layer can be called " + name);
            }
            if (xyz.length % (3 * sort.corners()) != 0) {
                throw new IllegalArgumentException(xyz.length + " numbers do not make whole " + sort);
            }
            this.name = name;
            this.sort = sort;
            this.xyz = xyz.clone();
        }

        /**
         * What the layer is called.
         *
         * @return its name
         */
        public String name() {
            return name;
        }

        /**
         * What the layer holds.
         *
         * @return the sort of its elements
         */
        public Sort sort() {
            return sort;
        }

        /**
         * How many elements it has.
         *
         * @return the number of points, lines or faces
         */
        public int size() {
            return xyz.length / (3 * sort.corners());
        }

        /**
         * Where a point of an element is.
         *
         * @param element from 0
         * @param corner from 0
         * @param axis 0 for x, 1 for y, 2 for z
         * @return the coordinate in millimetres
         */
        public double at(int element, int corner, int axis) {
            return xyz[3 * (sort.corners() * element + corner) + axis];
        }
    }

    /**
     * Copies the list.
     *
     * @param name where the file belongs
     * @param title what it shows
     * @param layers the layers
     */
    public Wireframe {
        layers = List.copyOf(layers);
    }
}
