package dev.calotte.cli.brief;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The word that was probably meant. */
final class Nearest {

    private static final int LONGEST = 40;

    private Nearest() {}

    /** The known word that is only a slip of the hand away, the first of several. */
    static Optional<String> of(String seen, List<String> known) {
        if (seen.length() > LONGEST) {
            return Optional.empty();
        }
        String small = seen.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        return known.stream()
                .filter(word -> distance(small, word) <= slip(word))
                .min(Comparator.comparingInt(word -> distance(small, word)));
    }

    private static int slip(String word) {
        return Math.min(3, 1 + word.length() / 4);
    }

    private static int distance(String seen, String word) {
        return LevenshteinDistance.getDefaultInstance().apply(seen, word);
    }
}
