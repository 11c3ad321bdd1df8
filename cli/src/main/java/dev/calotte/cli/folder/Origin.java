package dev.calotte.cli.folder;

import java.util.List;

/**
 * Where a result comes from and what it consists of: enough to make it again, given the brief.
 *
 * @param briefSha256 the SHA-256 of the brief's bytes
 * @param version the version of the program that made it
 * @param steps how much work was spent on laying parts on stock
 * @param files the names of all files but the manifest, sorted
 */
public record Origin(String briefSha256, String version, int steps, List<String> files) {

    /**
     * Copies the list.
     *
     * @param briefSha256 the SHA-256 of the brief's bytes
     * @param version the version of the program
     * @param steps how much work was spent
     * @param files the names of all files
     */
    public Origin {
        files = List.copyOf(files);
    }
}
