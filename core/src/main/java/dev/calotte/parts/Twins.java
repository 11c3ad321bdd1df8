package dev.calotte.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Counts things by shape and hand, and numbers them: mirror twins share a number, left comes before right.
 *
 * @param <K> what describes a shape, the same for both hands
 */
final class Twins<K> {

    /** The things of one shape and hand. */
    static final class Tally {
        private final int example;
        private int count;
        private int index;

        private Tally(int example) {
            this.example = example;
        }

        /** The first of them that was noted. */
        int example() {
            return example;
        }

        int count() {
            return count;
        }

        /** Counts a thing of this shape and hand. */
        void countAnother() {
            count++;
        }

        /** The place of their kind in the list that {@link Twins#kinds} made. */
        int index() {
            return index;
        }
    }

    /** Makes a kind of what was counted. */
    interface Maker<K, T> {
        /**
         * Makes a kind.
         *
         * @param number its number, from 1
         * @param hand its hand
         * @param twin the letter of its mirror image, if there are such things too
         */
        T make(int number, Hand hand, K shape, Tally tally, Optional<String> twin);
    }

    private final Map<K, Map<Hand, Tally>> tallies = new LinkedHashMap<>();
    private final Comparator<K> order;

    /**
     * Nothing counted yet.
     *
     * @param order tells shapes apart as their equality does
     */
    Twins(Comparator<K> order) {
        this.order = order;
    }

    /** Counts a thing. */
    Tally note(K shape, Hand hand, int thing) {
        Tally tally = tallies.computeIfAbsent(shape, k -> new EnumMap<>(Hand.class))
                .computeIfAbsent(hand, h -> new Tally(thing));
        tally.countAnother();
        return tally;
    }

    /** Numbers the shapes by a second order, equal ones by the first, and makes their kinds. */
    <T> List<T> kinds(Comparator<K> bySize, Maker<K, T> maker) {
        List<T> kinds = new ArrayList<>();
        int number = 0;
        for (K shape :
                tallies.keySet().stream().sorted(bySize.thenComparing(order)).toList()) {
            number++;
            Map<Hand, Tally> hands = tallies.get(shape);
            for (Map.Entry<Hand, Tally> entry : hands.entrySet()) {
                Hand mirror = entry.getKey().mirror();
                boolean twin = mirror != Hand.NONE && hands.containsKey(mirror);
                Optional<String> letter = twin ? Optional.of(mirror.letter()) : Optional.empty();
                entry.getValue().index = kinds.size();
                kinds.add(maker.make(number, entry.getKey(), shape, entry.getValue(), letter));
            }
        }
        return List.copyOf(kinds);
    }
}
