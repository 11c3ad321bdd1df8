package dev.calotte.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** What a check finds, each as its fault and its place. */
final class Found {

    private Found() {}

    static List<String> by(Consumer<Findings> check) {
        return list(check).stream()
                .map(finding -> (finding.fault() + " " + finding.place()).strip())
                .toList();
    }

    static List<Finding> list(Consumer<Findings> check) {
        Findings findings = new Findings("a file", "Make it again.");
        check.accept(findings);
        return findings.list();
    }

    /** A list in which one element is another. */
    static <T> List<T> changed(List<T> list, int at, UnaryOperator<T> change) {
        List<T> copy = new ArrayList<>(list);
        copy.set(at, change.apply(copy.get(at)));
        return copy;
    }

    static <T> List<T> without(List<T> list, int at) {
        List<T> copy = new ArrayList<>(list);
        copy.remove(at);
        return copy;
    }

    static <T> List<T> with(List<T> list, T one) {
        List<T> copy = new ArrayList<>(list);
        copy.add(one);
        return copy;
    }
}
