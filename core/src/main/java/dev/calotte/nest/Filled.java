package dev.calotte.nest;

import java.util.List;

/** A field and what lies on it. */
record Filled(Field field, List<Spot> spots) {
    Filled {
        spots = List.copyOf(spots);
    }
}
