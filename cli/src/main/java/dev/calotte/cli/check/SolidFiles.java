package dev.calotte.cli.check;

import dev.calotte.check.BodyMatch;
import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.check.Findings;
import dev.calotte.check.HandCheck;
import dev.calotte.check.ModelCheck;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.RecordedDome.HubKind;
import dev.calotte.check.SolidCheck;
import dev.calotte.export.Facets;
import dev.calotte.export.SolidReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is printed: jigs, hubs with sockets, models, and the plate that holds all but the models. */
final class SolidFiles {

    static final String AGAIN = "Do not cut or print from it; make the result again.";

    private static final Pattern MODEL = Pattern.compile("(stl/(?:.+/)?model)(?:-[0-9]+)?\\.stl");
    private static final Pattern JIG = Pattern.compile("stl/(?:.+/)?jigs/([^/]+)\\.stl");
    private static final Pattern HUB = Pattern.compile("(socket-)?([^-]+)(-2)?");

    private final ResultFiles files;
    private final RecordedDome dome;
    private final Map<String, HubKind> hubs = new TreeMap<>();
    private final Map<String, ModelCheck> models = new TreeMap<>();
    private final List<String> halfRead = new ArrayList<>();

    SolidFiles(ResultFiles files, RecordedDome dome) {
        this.files = files;
        this.dome = dome;
        dome.hubKinds().forEach(kind -> hubs.put(kind.mark(), kind));
    }

    private Facets read(SolidReader reader, String name) throws IOException {
        try (InputStream in = files.open(name)) {
            return reader.read(in);
        }
    }

    void solid(String name, SolidReader reader, Findings list) throws IOException {
        Facets facets;
        try {
            facets = read(reader, name);
        } catch (IOException e) {
            passedOver(name);
            throw e;
        }
        SolidCheck.of(name.substring(0, name.lastIndexOf('.')), facets, list);
        Matcher model = MODEL.matcher(name);
        if (model.matches()) {
            models.computeIfAbsent(model.group(1), all -> new ModelCheck(dome)).add(facets);
        }
        if (list.list().isEmpty()) {
            hand(name, facets, list);
        }
    }

    /** A solid that is not read: of its model too little is known then. */
    void passedOver(String name) {
        Matcher model = MODEL.matcher(name);
        if (model.matches()) {
            halfRead.add(model.group(1));
        }
    }

    /** Of a jig in pieces the first one holds the middle with the beginnings of all seats. */
    private void hand(String name, Facets facets, Findings list) {
        Matcher jig = JIG.matcher(name);
        Matcher hub = HUB.matcher(jig.matches() ? jig.group(1) : "");
        if (hub.matches() && hubs.containsKey(hub.group(2))) {
            boolean socket = hub.group(1) != null;
            boolean second = hub.group(3) != null;
            if (socket || !second) {
                HandCheck.of(hubs.get(hub.group(2)), second, facets, list);
            }
        }
    }

    /** What is only known when all solids were read. */
    List<Finding> models() {
        List<Finding> findings = new ArrayList<>();
        models.forEach((name, model) -> {
            if (!halfRead.contains(name)) {
                Findings list = new Findings(name + ".stl", AGAIN);
                model.check(list);
                findings.addAll(list.list());
            }
        });
        return findings;
    }

    /** Each body of a plate is closed, and that of every file of its name; none is missing or foreign. */
    void plate(String name, SolidReader reader, Optional<SolidReader> stl, Findings list) throws IOException {
        Map<String, List<String>> left = jigs();
        List<SolidReader.Body> bodies;
        try (InputStream in = files.open(name)) {
            bodies = reader.bodies(in);
        }
        for (SolidReader.Body body : bodies) {
            List<String> same = left.getOrDefault(body.name(), List.of());
            left.remove(body.name());
            SolidCheck.closed(body.name(), body.facets(), list);
            count(body, list);
            if (same.isEmpty()) {
                list.add(Fault.FOREIGN, body.name(), "no other file holds a body of this name, or it is here twice.");
            }
            for (String file : stl.isPresent() ? same : List.<String>of()) {
                same(body, file, stl.get(), list);
            }
        }
        left.forEach((mark, same) -> list.add(Fault.MISSING, mark, "the body of " + same.get(0) + " is not in it."));
    }

    /** The files of each jig, one in every dialect. */
    private Map<String, List<String>> jigs() {
        Map<String, List<String>> jigs = new TreeMap<>();
        for (String file : files.names("stl/", ".stl")) {
            Matcher jig = JIG.matcher(file);
            if (jig.matches()) {
                jigs.computeIfAbsent(jig.group(1), mark -> new ArrayList<>()).add(file);
            }
        }
        return jigs;
    }

    private void count(SolidReader.Body body, Findings list) {
        Matcher hub = HUB.matcher(body.name());
        boolean socket = hub.matches() && hub.group(1) != null && hubs.containsKey(hub.group(2));
        int needed = socket ? hubs.get(hub.group(2)).count() : 1;
        if (body.count() != needed) {
            list.add(
                    Fault.DIFFERENT,
                    body.name(),
                    "it is laid on the plate " + body.count() + " times, " + needed + " are needed.");
        }
    }

    private void same(SolidReader.Body body, String file, SolidReader stl, Findings list) {
        try {
            BodyMatch.of(body.name(), body.facets(), file, read(stl, file), list);
        } catch (IOException e) {
            // that it cannot be read is told of the file itself
            return;
        }
    }
}
