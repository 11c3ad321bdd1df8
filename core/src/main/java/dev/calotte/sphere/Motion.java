package dev.calotte.sphere;

import java.util.Arrays;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A rotation or mirroring that brings a solid onto itself: where its corners and faces go, and the matrix. */
final class Motion {

    private final Solid solid;
    private final int[] corners;
    private final int[] faces;
    private final double[] matrix;

    /** The motion that brings the first face's corners 0, 1 and 2 to those of a face, from one of them on. */
    Motion(Solid solid, int face, int start, boolean mirrored) {
        this.solid = solid;
        this.corners = new int[solid.cornerCount()];
        this.faces = new int[solid.faceCount()];
        Arrays.fill(faces, -1);
        for (int k = 0; k < 3; k++) {
            corners[solid.faceCorner(0, k)] = solid.faceCorner(face, (start + (mirrored ? 3 - k : k)) % 3);
        }
        faces[0] = face;
        spread(0);
        this.matrix = matrix();
    }

    /** From a face whose image is known to those around it. */
    private void spread(int face) {
        for (int k = 0; k < 3; k++) {
            int next = solid.neighbour(face, k);
            if (faces[next] < 0) {
                int one = solid.faceCorner(face, k);
                int other = solid.faceCorner(face, (k + 1) % 3);
                faces[next] = across(faces[face], corners[one], corners[other]);
                corners[third(next, one, other)] = third(faces[next], corners[one], corners[other]);
                spread(next);
            }
        }
    }

    private int across(int face, int one, int other) {
        int p = solid.place(face, one);
        int q = solid.place(face, other);
        return solid.neighbour(face, (p + 1) % 3 == q ? p : q);
    }

    private int third(int face, int one, int other) {
        return solid.faceCorner(face, 3 - solid.place(face, one) - solid.place(face, other));
    }

    /** Row by row: the images of the first face's corners times their dual basis. */
    private double[] matrix() {
        double[] rows = new double[9];
        for (int k = 0; k < 3; k++) {
            Vector3D image = solid.corner(corners[solid.faceCorner(0, k)]);
            Vector3D ahead = solid.corner(solid.faceCorner(0, (k + 1) % 3));
            Vector3D cross = ahead.crossProduct(solid.corner(solid.faceCorner(0, (k + 2) % 3)));
            double[] dual = cross.scalarMultiply(1 / cross.dotProduct(solid.corner(solid.faceCorner(0, k))))
                    .toArray();
            double[] column = image.toArray();
            for (int i = 0; i < 9; i++) {
                rows[i] += column[i / 3] * dual[i % 3];
            }
        }
        return rows;
    }

    /** The face where a face goes. */
    int face(int face) {
        return faces[face];
    }

    /** The place, in the face where a face goes, of the image of the face's corner k. */
    int place(int face, int k) {
        return solid.place(faces[face], corners[solid.faceCorner(face, k)]);
    }

    /** Where a point goes. */
    Vector3D apply(Vector3D p) {
        return new Vector3D(row(0, p), row(3, p), row(6, p));
    }

    private double row(int i, Vector3D p) {
        return matrix[i] * p.getX() + matrix[i + 1] * p.getY() + matrix[i + 2] * p.getZ();
    }

    /** Where a point comes from; the matrix turned over, as its rows are unit vectors at right angles. */
    Vector3D undo(Vector3D p) {
        return new Vector3D(column(0, p), column(1, p), column(2, p));
    }

    private double column(int i, Vector3D p) {
        return matrix[i] * p.getX() + matrix[i + 3] * p.getY() + matrix[i + 6] * p.getZ();
    }

    /** Whether right and left hands change. */
    boolean mirrors() {
        Vector3D x = undo(Vector3D.PLUS_I);
        return x.crossProduct(undo(Vector3D.PLUS_J)).dotProduct(undo(Vector3D.PLUS_K)) < 0;
    }
}
