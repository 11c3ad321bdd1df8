package dev.calotte.cli.check;

import dev.calotte.check.Finding;
import dev.calotte.check.Mismatch;
import dev.calotte.cli.folder.Origin;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a folder of results was found to be.
 *
 * @param title the title of the dome
 * @param origin what its record says it was made of; empty where that cannot be read
 * @param files how many files it has
 * @param again how many files were made again from the brief and compared; 0 if that was not asked for
 * @param pieces what was put together, one sentence
 * @param mismatch the largest distance between things that should meet
 * @param notRead what could not be looked at, and why
 * @param findings what is wrong
 */
public record CheckResult(
        String title,
        Optional<Origin> origin,
        int files,
        int again,
        String pieces,
        Mismatch mismatch,
        List<String> notRead,
        List<Finding> findings) {

    /**
     * Copies the lists.
     *
     * @param title the title of the dome
     * @param origin what its record says it was made of
     * @param files how many files it has
     * @param again how many files were made again and compared
     * @param pieces what was put together
     * @param mismatch the largest distance between things that should meet
     * @param notRead what could not be looked at
     * @param findings what is wrong
     */
    public CheckResult {
        notRead = List.copyOf(notRead);
        findings = List.copyOf(findings);
    }

    /**
     * With what came of making it again.
     *
     * @param count how many files were compared
     * @param more what differs
     * @return the same folder with more findings, each told once
     */
    public CheckResult withAgain(int count, List<Finding> more) {
        Set<Finding> all = new LinkedHashSet<>(findings);
        all.addAll(more);
        return new CheckResult(title, origin, files, count, pieces, mismatch, notRead, List.copyOf(all));
    }
}
