package dev.calotte.cli.brief;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.assembly.PatchWay;
import dev.calotte.assembly.Raise;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the section {@code assembly}. */
final class AssemblyReader {

    private AssemblyReader() {}

    static AssemblySpec read(Fields section) {
        Map<String, Optional<PatchWay>> ways = new LinkedHashMap<>();
        ways.put("fewest", Optional.empty());
        for (PatchWay way : PatchWay.values()) {
            ways.put(Words.word(way), Optional.of(way));
        }
        AssemblySpec spec = new AssemblySpec(
                section.read("patches", Optional.empty(), Words.meaning(ways)),
                section.read("raise", Raise.BASE, Words.of(Raise.values())));
        section.close();
        return spec;
    }
}
