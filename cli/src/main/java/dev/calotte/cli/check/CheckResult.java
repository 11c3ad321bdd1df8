package dev.calotte.cli.check;

import dev.calotte.check.Finding;
import dev.calotte.check.Mismatch;
import java.util.List;

/**
 * What a folder of results was found to be.
 *
 * @param title the title of the dome
 * @param files how many files it has
 * @param pieces what was put together, one sentence
 * @param mismatch the largest distance between things that should meet
 * @param notRead what could not be looked at, and why
 * @param findings what is wrong
 */
public record CheckResult(
        String title, int files, String pieces, Mismatch mismatch, List<String> notRead, List<Finding> findings) {

    /**
     * Copies the lists.
     *
     * @param title the title of the dome
     * @param files how many files it has
     * @param pieces what was put together
     * @param mismatch the largest distance between things that should meet
     * @param notRead what could not be looked at
     * @param findings what is wrong
     */
    public CheckResult {
        notRead = List.copyOf(notRead);
        findings = List.copyOf(findings);
    }
}
