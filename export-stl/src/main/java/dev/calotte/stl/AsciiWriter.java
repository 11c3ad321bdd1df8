package dev.calotte.stl;

import dev.calotte.units.NumberText;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/** Puts a surface into text: the numbers of the binary file, each with all the digits it needs to be read back. */
final class AsciiWriter {

    private final Writer out;
    private final StringBuilder line = new StringBuilder();

    AsciiWriter(OutputStream out) {
        this.out = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
    }

    void write(String part, Surface surface) throws IOException {
        String name = part.replaceAll("[^!-~]", "_") + " size=" + surface.extent();
        out.write("solid " + name + "\n");
        Cross cross = new Cross();
        for (int i = 0; i < surface.size(); i++) {
            Facet facet = surface.facet(i);
            add("  facet normal", surface.normal(i, cross));
            out.write("    outer loop\n");
            add("      vertex", facet.a());
            add("      vertex", facet.b());
            add("      vertex", facet.c());
            out.write("    endloop\n  endfacet\n");
        }
        out.write("endsolid " + name + "\n");
        out.flush();
    }

    private void add(String words, Place place) throws IOException {
        add(words, place.x(), place.y(), place.z());
    }

    private void add(String words, double x, double y, double z) throws IOException {
        line.setLength(0);
        line.append(words);
        for (double value : new double[] {x, y, z}) {
            line.append(' ');
            NumberText.appendTrimmed(line, value, NumberText.MOST_DECIMALS);
        }
        out.append(line.append('\n'));
    }
}
