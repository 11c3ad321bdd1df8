package dev.calotte.contour;

import java.util.Arrays;

/** Boxes that a line has met, as it sweeps from left to right, and has not yet left behind. */
final class Strip {

    private int[] numbers = new int[4];
    /** Where each is lowest and highest, and its right end. */
    private double[] boxes = new double[12];

    private int size;

    void add(int number, double low, double high, double right) {
        if (size == numbers.length) {
            numbers = Arrays.copyOf(numbers, 2 * size);
            boxes = Arrays.copyOf(boxes, 6 * size);
        }
        boxes[3 * size] = low;
        boxes[3 * size + 1] = high;
        boxes[3 * size + 2] = right;
        numbers[size] = number;
        size++;
    }

    /** Lets go of those that end further left than what begins at the line can lie on. */
    void leaveBehind(double line) {
        double behind = line - Side.APART - Math.abs(line) * LeftEnds.ROUNDING;
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (boxes[3 * i + 2] >= behind) {
                keep(i, kept++);
            }
        }
        size = kept;
    }

    private void keep(int from, int to) {
        if (from != to) {
            numbers[to] = numbers[from];
            System.arraycopy(boxes, 3 * from, boxes, 3 * to, 3);
        }
    }

    int size() {
        return size;
    }

    int number(int place) {
        return numbers[place];
    }

    /** Whether a box is at the height of another one. */
    boolean isLevel(int place, double low, double high) {
        return boxes[3 * place] <= high + Side.APART && boxes[3 * place + 1] >= low - Side.APART;
    }
}
