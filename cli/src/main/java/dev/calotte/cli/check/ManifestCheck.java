package dev.calotte.cli.check;

import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.cli.folder.Manifest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which files are here, against which were written, and whether their bytes are still those. */
final class ManifestCheck {

    private static final int MOST_BYTES = 1 << 26;
    private static final String AGAIN = "Make the result again from its brief, or bring the file back from a copy.";
    private static final String AWAY = "Move it away; it was not written with this result.";

    private final ResultFiles files;
    private final List<Finding> findings = new ArrayList<>();

    ManifestCheck(ResultFiles files) {
        this.files = files;
    }

    List<Finding> check() throws IOException {
        files.others()
                .forEach(name -> findings.add(
                        new Finding(Fault.FOREIGN, name, "", "it is no regular file; links are not followed.", AWAY)));
        if (!files.has(Manifest.NAME)) {
            findings.add(new Finding(Fault.MISSING, Manifest.NAME, "", "there are no sums of the files.", AGAIN));
            return findings;
        }
        Optional<Manifest> manifest = Manifest.parse(files.text(Manifest.NAME, MOST_BYTES));
        if (manifest.isEmpty()) {
            findings.add(new Finding(
                    Fault.UNREADABLE, Manifest.NAME, "", "a line is not a sum, two spaces and a name.", AGAIN));
            return findings;
        }
        sums(manifest.get().sums());
        return findings;
    }

    private void sums(Map<String, String> sums) throws IOException {
        for (Map.Entry<String, String> sum : sums.entrySet()) {
            if (!files.has(sum.getKey())) {
                findings.add(missing(sum.getKey()));
            } else if (!files.sha256(sum.getKey()).equals(sum.getValue())) {
                findings.add(new Finding(
                        Fault.CHANGED, sum.getKey(), "", "its bytes are not those that were written.", AGAIN));
            }
        }
        foreign(sums.keySet());
    }

    /** Against the files that the record names. */
    List<Finding> against(Set<String> recorded) {
        findings.clear();
        recorded.stream().filter(name -> !files.has(name)).forEach(name -> findings.add(missing(name)));
        foreign(recorded);
        return findings;
    }

    private void foreign(Set<String> known) {
        files.names().stream()
                .filter(name -> !known.contains(name) && !name.equals(Manifest.NAME))
                .forEach(name -> findings.add(foreign(name)));
    }

    static Finding foreign(String name) {
        return new Finding(Fault.FOREIGN, name, "", "this file is not one of the result.", AWAY);
    }

    static Finding missing(String name) {
        return new Finding(Fault.MISSING, name, "", "this file is missing.", AGAIN);
    }
}
