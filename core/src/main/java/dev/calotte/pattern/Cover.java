package dev.calotte.pattern;

import java.util.Optional;

/**
 * A cover: how its pieces differ from the triangles between hub centres.
 *
 * <p>For example {@code Cover.of("glazing").with(Allowances.of(-2, 0))} for panels with a gap of 4 mm between them.
 *
 * <pre>{@code
 * Cover cloth = Cover.of("cloth").with(Allowances.of(15, 60));
 * }</pre>
 *
 * @param name what it is called, of the characters {@code A-Z a-z 0-9 . _ -}
 * @param sheeting where its material lies and how thick it is
 * @param allowances what is added round each panel
 * @param fasteners its rows of holes, if it has any
 * @param treatment what matters when it is laid out and joined
 */
public record Cover(
        String name, Sheeting sheeting, Allowances allowances, Optional<Fasteners> fasteners, Treatment treatment) {

    private static final String NAME = "[A-Za-z0-9._-]+";

    /**
     * Checks the name, which becomes part of file names.
     *
     * @param name what it is called
     * @param sheeting where its material lies
     * @param allowances what is added
     * @param fasteners its rows of holes
     * @param treatment how it is laid out and joined
     * @throws IllegalArgumentException if the name is empty or has other characters
     */
    public Cover {
        if (!name.matches(NAME)) {
            throw new IllegalArgumentException("no cover is called " + name);
        }
    }

    /**
     * A thin cover without allowances.
     *
     * @param name what it is called
     * @return the cover
     */
    public static Cover of(String name) {
        return new Cover(name, Sheeting.THIN, Allowances.NONE, Optional.empty(), Treatment.PLAIN);
    }

    /**
     * The same of another material.
     *
     * @param other where the material lies and how thick it is
     * @return a copy
     */
    public Cover with(Sheeting other) {
        return new Cover(name, other, allowances, fasteners, treatment);
    }

    /**
     * The same with other allowances.
     *
     * @param other what is added round each panel
     * @return a copy
     */
    public Cover with(Allowances other) {
        return new Cover(name, sheeting, other, fasteners, treatment);
    }

    /**
     * The same with holes.
     *
     * @param other its rows of holes
     * @return a copy
     */
    public Cover with(Fasteners other) {
        return new Cover(name, sheeting, allowances, Optional.of(other), treatment);
    }

    /**
     * The same, treated differently.
     *
     * @param other what matters when it is laid out and joined
     * @return a copy
     */
    public Cover with(Treatment other) {
        return new Cover(name, sheeting, allowances, fasteners, other);
    }

    /**
     * Where one of its keys stands in a brief.
     *
     * @param key the key, for example {@code hub-relief}
     * @return for example {@code covers.glazing.hub-relief}
     */
    String where(String key) {
        return "covers." + name + "." + key;
    }
}
