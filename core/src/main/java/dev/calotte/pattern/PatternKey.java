package dev.calotte.pattern;

import dev.calotte.parts.PanelKind;
import dev.calotte.pattern.PatternKeys.Slot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * What makes two panels the same pattern: their kind, and for each side, in the pattern's order, what {@link Slot} says
 * and the code of its notches.
 *
 * @param kind the place of the panel kind among all kinds
 * @param slots the three sides
 * @param codes the codes of their notches; {@link Code#NONE} as long as they are not known
 */
record PatternKey(int kind, List<Slot> slots, List<Code> codes) implements Comparable<PatternKey> {

    private static final Comparator<PatternKey> ORDER = Comparator.comparingInt(PatternKey::kind)
            .thenComparing(PatternKey::slots, PatternKey::compareLists)
            .thenComparing(PatternKey::codes, PatternKey::compareLists);

    /**
     * The code of a side's notches.
     *
     * @param joint the number of the joint, or -1
     * @param down whether the side runs from the strut's higher end to its lower one
     */
    record Code(int joint, boolean down) implements Comparable<Code> {

        static final Code NONE = new Code(-1, false);

        @Override
        public int compareTo(Code other) {
            int byJoint = Integer.compare(joint, other.joint);
            return byJoint != 0 ? byJoint : Boolean.compare(other.down, down);
        }
    }

    PatternKey {
        slots = List.copyOf(slots);
        codes = List.copyOf(codes);
    }

    private static <T extends Comparable<T>> int compareLists(List<T> one, List<T> other) {
        int order = 0;
        for (int i = 0; i < one.size() && order == 0; i++) {
            order = one.get(i).compareTo(other.get(i));
        }
        return order;
    }

    @Override
    public int compareTo(PatternKey other) {
        return ORDER.compare(this, other);
    }

    /** Whether the sides cannot be told from one another by the key. */
    boolean isTurnable(PanelKind panelKind) {
        return panelKind.struts().get(0).equals(panelKind.struts().get(2))
                && slots.stream().distinct().count() == 1
                && codes.stream().distinct().count() == 1;
    }

    /**
     * The key of the mirror image, without codes.
     *
     * @param twin the place of the mirror kind
     * @param own the strut kinds of the sides in the order of this key
     * @param wanted their order in a pattern of the mirror kind
     */
    PatternKey mirrored(int twin, List<Integer> own, List<Integer> wanted) {
        List<Slot> reversed = new ArrayList<>(slots);
        List<Integer> struts = new ArrayList<>(own);
        Collections.reverse(reversed);
        Collections.reverse(struts);
        PatternKey least = null;
        for (int turn = 0; turn < 3; turn++) {
            PatternKey key = new PatternKey(twin, reversed, codes);
            least = struts.equals(wanted) && (least == null || key.compareTo(least) < 0) ? key : least;
            Collections.rotate(reversed, 1);
            Collections.rotate(struts, 1);
        }
        return least;
    }
}
