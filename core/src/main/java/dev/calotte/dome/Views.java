package dev.calotte.dome;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import java.util.function.IntFunction;

/** A list that makes its elements when they are asked for, so that a large dome is kept as plain arrays. */
final class Views<T> extends AbstractList<T> implements RandomAccess {

    private final int size;
    private final IntFunction<T> element;

    private Views(int size, IntFunction<T> element) {
        this.size = size;
        this.element = element;
    }

    static <T> List<T> of(int size, IntFunction<T> element) {
        return new Views<>(size, element);
    }

    @Override
    public T get(int index) {
        return element.apply(Objects.checkIndex(index, size));
    }

    @Override
    public int size() {
        return size;
    }
}
