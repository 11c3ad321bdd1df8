package dev.calotte.drawing;

import dev.calotte.document.Picture.Label;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;

/** Whether letters lie on one another. */
final class Crowding {

    private Crowding() {}

    /** How many labels lie on another one. */
    static int count(List<Label> labels) {
        List<Box> boxes = labels.stream()
                .map(Letters::box)
                .sorted(Comparator.comparingDouble(Box::left))
                .toList();
        Deque<Box> open = new ArrayDeque<>();
        int crowded = 0;
        for (Box box : boxes) {
            boolean free = true;
            for (Iterator<Box> others = open.iterator(); others.hasNext(); ) {
                Box other = others.next();
                if (other.right() <= box.left()) {
                    others.remove();
                } else {
                    free &= !other.meets(box);
                }
            }
            crowded += free ? 0 : 1;
            open.add(box);
        }
        return crowded;
    }
}
