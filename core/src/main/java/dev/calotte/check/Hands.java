package dev.calotte.check;

/** Which of two mirror images a mark stands for. */
final class Hands {

    private Hands() {}

    /** By the letter that it ends with. */
    static String of(String mark) {
        return mark.endsWith("L") ? "left" : mark.endsWith("R") ? "right" : "none";
    }

    /** The mark of the mirror image; of what has no hand its own. */
    static String twin(String mark) {
        String stem = mark.isEmpty() ? mark : mark.substring(0, mark.length() - 1);
        return mark.endsWith("L") ? stem + "R" : mark.endsWith("R") ? stem + "L" : mark;
    }
}
