package dev.calotte.dxf;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The three ways in which a file says the same geometry. No single one is read everywhere, so that which to ask for
 * depends on the reader.
 */
public enum Dialect {
    /**
     * Release 12 (AC1009), outlines as closed {@code POLYLINE}. Read by nearly all CAD and CAM programs, and the only one
     * that is both accepted so widely and simple enough to be checked in full; the usual one. OpenSCAD passes over it.
     */
    POLYLINE("release-12.txt"),
    /**
     * Release 2000 (AC1015), outlines as closed {@code LWPOLYLINE}, with the whole structure that releases from 2000 on
     * require. For OpenSCAD, and for cutting services that refuse release 12. Its structure is checked record by record
     * against the published reference, not with AutoCAD itself.
     */
    LWPOLYLINE("release-2000.txt"),
    /**
     * Release 12, outlines taken apart into {@code LINE} and {@code ARC}, head to tail in cutting order. For senders of
     * G-code that pass over the closing side or the arcs of a polyline, and for machines that take only lines and circles.
     * Router programs cannot offset such outlines before they have joined them.
     */
    LINES("release-12.txt");

    private final String scaffold;

    Dialect(String scaffold) {
        this.scaffold = scaffold;
    }

    /**
     * What the dialect is called in a brief.
     *
     * @return {@code polyline}, {@code lwpolyline} or {@code lines}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The words of all dialects, the usual one first. */
    static List<String> words() {
        return Arrays.stream(values()).map(Dialect::word).toList();
    }

    /** The dialect of a word. */
    static Dialect of(String word) {
        return Arrays.stream(values())
                .filter(dialect -> dialect.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("DXF has no dialect " + word));
    }

    /** The file that holds what stands round the entities. */
    String scaffold() {
        return scaffold;
    }
}
