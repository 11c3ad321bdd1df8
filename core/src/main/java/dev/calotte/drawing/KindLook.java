package dev.calotte.drawing;

import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Weight;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** How kinds of panels are told apart: by the colour of their number, twins by their hatch as well. */
final class KindLook {

    private KindLook() {}

    static Facet facet(List<Vector2D> corners, PanelKind kind, Weight weight, String title) {
        return new Facet(xy(corners), kind.number(), hatch(kind.hand()), weight, title);
    }

    static List<Double> xy(List<Vector2D> corners) {
        return corners.stream().flatMap(c -> Stream.of(c.getX(), c.getY())).toList();
    }

    static Hatch hatch(Hand hand) {
        return switch (hand) {
            case LEFT -> Hatch.RISING;
            case RIGHT -> Hatch.FALLING;
            case NONE -> Hatch.NONE;
        };
    }

    static String hand(Hand hand) {
        return switch (hand) {
            case LEFT -> "left hand";
            case RIGHT -> "right hand";
            case NONE -> "no hand";
        };
    }
}
