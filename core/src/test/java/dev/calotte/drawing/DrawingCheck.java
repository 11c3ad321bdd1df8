package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import java.util.ArrayList;
import java.util.List;

/** What every drawing has to keep to, checked without the code that laid it out. */
final class DrawingCheck {

    private DrawingCheck() {}

    /**
     * The width of a text over the height of its capitals: Helvetica, after the Core 14 AFM files published by Adobe
     * (capitals 718, digits 556, hyphen 333, point and space 278, the wider of the capitals 778, small letters 556 at
     * most but for m and w with 833).
     */
    static double width(String text) {
        return text.codePoints()
                        .mapToDouble(c -> c == '-'
                                ? 333
                                : c == '.' || c == ' '
                                        ? 278
                                        : c == 'm' || c == 'w' ? 833 : Character.isUpperCase(c) ? 722 : 556)
                        .sum()
                / 718;
    }

    /** Left, low, right and high of a label's capitals. */
    static double[] box(Label label) {
        double width = width(label.text()) * label.heightMm();
        double left =
                label.x() - (label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.END ? width : width / 2);
        double half = label.heightMm() / 2;
        return new double[] {left, label.y() - half, left + width, label.y() + half};
    }

    static List<Label> labels(Picture picture) {
        return items(picture, Label.class);
    }

    static List<Facet> facets(Picture picture) {
        return items(picture, Facet.class);
    }

    static <T extends Item> List<T> items(Picture picture, Class<T> sort) {
        return picture.items().stream().filter(sort::isInstance).map(sort::cast).toList();
    }

    static void everythingIsOnThePage(Picture picture) {
        for (Item item : picture.items()) {
            double[] box = extent(item);
            boolean on =
                    box[0] >= 1 && box[1] >= 1 && box[2] <= picture.widthMm() - 1 && box[3] <= picture.heightMm() - 1;
            if (!on) {
                throw new AssertionError(picture.name() + ": " + item + " is not on the page");
            }
        }
    }

    private static double[] extent(Item item) {
        if (item instanceof Label label) {
            return box(label);
        }
        if (item instanceof Line line) {
            return extent(List.of(line.x1(), line.y1(), line.x2(), line.y2()));
        }
        if (item instanceof Disc disc) {
            double r = disc.radiusMm();
            return new double[] {disc.x() - r, disc.y() - r, disc.x() + r, disc.y() + r};
        }
        return extent(((Facet) item).xy());
    }

    private static double[] extent(List<Double> xy) {
        double[] box = {xy.get(0), xy.get(1), xy.get(0), xy.get(1)};
        for (int i = 0; i < xy.size(); i++) {
            box[i % 2] = Math.min(box[i % 2], xy.get(i));
            box[2 + i % 2] = Math.max(box[2 + i % 2], xy.get(i));
        }
        return box;
    }

    static void noLabelLiesOnAnother(Picture picture) {
        List<Label> labels = labels(picture);
        List<double[]> boxes = labels.stream().map(DrawingCheck::box).toList();
        for (int i = 0; i < labels.size(); i++) {
            double[] a = boxes.get(i);
            for (int j = 0; j < i; j++) {
                double[] b = boxes.get(j);
                boolean apart = a[0] >= b[2] || b[0] >= a[2] || a[1] >= b[3] || b[1] >= a[3];
                if (!apart) {
                    throw new AssertionError(picture.name() + ": " + labels.get(i) + " lies on " + labels.get(j));
                }
            }
        }
    }

    static void lettersAreLargeEnough(Picture picture) {
        assertThat(labels(picture))
                .allMatch(label -> label.heightMm() >= 2.5)
                .noneMatch(label -> label.text().isBlank());
    }

    /** Whether all four corners of a label's capitals lie inside a facet whose corners go counter-clockwise. */
    static boolean isInside(Label label, Facet facet) {
        double[] box = box(label);
        boolean inside = true;
        for (int i = 0; i < facet.xy().size(); i += 2) {
            int j = (i + 2) % facet.xy().size();
            for (double x : new double[] {box[0], box[2]}) {
                for (double y : new double[] {box[1], box[3]}) {
                    double dx = facet.xy().get(j) - facet.xy().get(i);
                    double dy = facet.xy().get(j + 1) - facet.xy().get(i + 1);
                    inside &= dx * (y - facet.xy().get(i + 1))
                                    - dy * (x - facet.xy().get(i))
                            > 0;
                }
            }
        }
        return inside;
    }

    static double area(Facet facet) {
        double twice = 0;
        List<Double> xy = facet.xy();
        for (int i = 0; i < xy.size(); i += 2) {
            int j = (i + 2) % xy.size();
            twice += xy.get(i) * xy.get(j + 1) - xy.get(j) * xy.get(i + 1);
        }
        return twice / 2;
    }

    /** How often each text stands in pictures. */
    static long count(List<Picture> pictures, String text) {
        List<String> all = new ArrayList<>();
        pictures.forEach(picture -> labels(picture).forEach(label -> all.add(label.text())));
        return all.stream().filter(text::equals).count();
    }
}
