package dev.calotte.pattern;

import dev.calotte.pattern.PatternKey.Code;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the notches of a joint are. A joint's number is written in binary with one notch before it that is always
 * there, all in the half of the strut that begins at its higher end. So the notches of two sides lie on one another if
 * and only if both belong to the same joint and read the strut in opposite ways: turned round, all of them lie in the
 * other half.
 */
record NotchCodes(int joints, Allowances allowances) {

    /** Where the first notch is, and where the last one may be, as parts of the strut. */
    private static final double FIRST = 0.15;

    private static final double LAST = 0.42;
    /** Common practice, no source. */
    private static final double PITCH_MM = 18;

    /** A notch weakens the seam; half the allowance or 5 mm is the usual bound (common practice, no source). */
    private static final double DEEPEST_MM = 5;

    List<Notch> notches(Code code, double strutMm, double allowanceMm) {
        if (code.joint() < 0) {
            return List.of();
        }
        int bits = Math.max(1, Integer.SIZE - Integer.numberOfLeadingZeros(joints - 1));
        double pitch = Math.min(PITCH_MM, (LAST - FIRST) * strutMm / bits);
        List<Notch> notches = new ArrayList<>();
        for (int bit = -1; bit < bits; bit++) {
            if (bit < 0 || (code.joint() >> bit & 1) == 1) {
                double fromTop = FIRST * strutMm + (bit + 1) * pitch;
                double along = code.down() ? fromTop : strutMm - fromTop;
                notches.add(code.down() ? notches.size() : 0, new Notch(along, depthMm(allowanceMm, pitch)));
            }
        }
        return notches;
    }

    private double depthMm(double allowanceMm, double pitchMm) {
        // the same depth on both sides of a joint, so that the narrower allowance decides
        double least = Math.min(allowanceMm, allowances.narrowMm());
        // twice as wide as it is deep, a notch must leave a tooth between itself and the next one
        return Math.max(0, Math.min(Math.min(DEEPEST_MM, pitchMm / 3), least / 2));
    }
}
