package dev.calotte.stl.body;

import dev.calotte.document.Bedded;
import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import dev.calotte.document.Rods;
import java.util.ArrayList;
import java.util.List;

/** Solids, cut into equal slices along each axis where they are larger than the room. */
final class Pieces {

    private Pieces() {}

    static List<Mesh> of(Document document) {
        if (document instanceof Bedded bedded) {
            List<Soup> pieces = List.of(soup(bedded.whole()));
            double[] room = {bedded.lengthMm(), bedded.widthMm(), bedded.heightMm()};
            for (int axis = 0; axis < 3; axis++) {
                pieces = sliced(pieces, axis, room[axis]);
            }
            return meshes(document, pieces);
        }
        return meshes(document, List.of(soup(document)));
    }

    private static Soup soup(Document solid) {
        return solid instanceof Rods rods ? RodShape.of(rods) : Soup.of((Mesh) solid);
    }

    private static List<Soup> sliced(List<Soup> pieces, int axis, double room) {
        List<Soup> slices = new ArrayList<>();
        for (Soup piece : pieces) {
            double least = piece.least(axis);
            double size = piece.most(axis) - least;
            // the planes are moved a little where they would meet a vertex
            int count = (int) Math.ceil((size + 1) / room);
            Soup rest = piece;
            for (int i = 1; i < count; i++) {
                double at = least + i * size / count;
                slices.add(Slice.below(rest, axis, at));
                rest = Slice.above(rest, axis, at);
            }
            slices.add(rest);
        }
        return slices;
    }

    private static List<Mesh> meshes(Document document, List<Soup> pieces) {
        List<Soup> parts =
                pieces.stream().flatMap(piece -> piece.parts().stream()).toList();
        List<Mesh> meshes = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            boolean single = parts.size() == 1;
            meshes.add(parts.get(i)
                    .mesh(
                            document.name() + (i == 0 ? "" : "-" + (i + 1)),
                            document.title() + (single ? "" : ", piece " + (i + 1))));
        }
        return meshes;
    }
}
