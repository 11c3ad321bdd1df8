package dev.calotte.cli;

import picocli.CommandLine.Option;

/** How much a command says of what it does. */
final class Volume {

    @Option(
            names = {"-q", "--quiet"},
            description = "Say nothing unless something is wrong.")
    private boolean quiet;

    @Option(
            names = {"-v", "--verbose"},
            description = "Name every file.")
    private boolean verbose;

    boolean isQuiet() {
        return quiet;
    }

    boolean isVerbose() {
        return verbose;
    }
}
