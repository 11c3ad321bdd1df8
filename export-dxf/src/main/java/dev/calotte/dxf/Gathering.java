package dev.calotte.dxf;

import dev.calotte.dxf.DxfOutlines.Outline;
import dev.calotte.dxf.TagReader.Tag;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes outlines of entities. */
final class Gathering implements Gatherer {

    private static final Set<String> PASSED_OVER = Set.of(
            "TEXT", "MTEXT", "ATTDEF", "ATTRIB", "DIMENSION", "LEADER", "MULTILEADER", "POINT", "HATCH", "VIEWPORT");

    private static final int MOST_CORNERS = 200_000;

    /** Bits of the flags of a POLYLINE: fitted curves, splines, lines in space, meshes. */
    private static final int NOT_FLAT = 2 | 4 | 8 | 16 | 64;

    private final List<Trace> traces = new ArrayList<>();
    private final Map<String, Joining> loose = new LinkedHashMap<>();
    private Trace open;
    private int corners;

    @Override
    public void add(Entity entity) throws DxfFormatException {
        if (open != null) {
            vertex(entity);
        } else if (!PASSED_OVER.contains(entity.type()) && !entity.isOnPaper()) {
            entity.refuseUnlessFlat();
            switch (entity.type()) {
                case "POLYLINE" -> begin(entity);
                case "LWPOLYLINE" -> light(entity);
                case "CIRCLE" -> traces.add(Trace.circle(entity));
                case "LINE", "ARC" -> loose(entity);
                default ->
                    throw entity.wrong(
                            "this cannot be read as part of an outline; save it as polylines, lines and arcs");
            }
        }
    }

    private void count(Entity entity) throws DxfFormatException {
        corners++;
        if (corners > MOST_CORNERS) {
            throw entity.wrong("the file has more than " + MOST_CORNERS + " corners");
        }
    }

    private void begin(Entity entity) throws DxfFormatException {
        int flags = entity.whole(70, 0);
        if ((flags & NOT_FLAT) != 0) {
            throw entity.wrong("only plain polylines can be read, without fitted curves, heights or meshes");
        }
        open = new Trace(entity.origin(), (flags & 1) != 0);
    }

    private void vertex(Entity entity) throws DxfFormatException {
        if (entity.type().equals("SEQEND")) {
            traces.add(open);
            open = null;
        } else if (entity.type().equals("VERTEX")) {
            count(entity);
            open.add(entity.number(10), entity.number(20), entity.number(42, 0));
        } else {
            throw entity.wrong("the POLYLINE before has no SEQEND");
        }
    }

    @Override
    public void end(Tag tag) throws DxfFormatException {
        if (open != null) {
            throw tag.wrong("the last POLYLINE has no SEQEND");
        }
    }

    private void light(Entity entity) throws DxfFormatException {
        Trace trace = new Trace(entity.origin(), (entity.whole(70, 0) & 1) != 0);
        for (Tag tag : entity.tags()) {
            switch (tag.code()) {
                case 10 -> {
                    count(entity);
                    trace.add(tag.number(), 0, 0);
                }
                case 20 -> trace.setY(tag);
                case 42 -> trace.setBulge(tag);
                default -> {}
            }
        }
        if (entity.whole(90, trace.size()) != trace.size()) {
            throw entity.wrong("it says that it has " + entity.whole(90, 0) + " corners, and has " + trace.size());
        }
        traces.add(trace);
    }

    private void loose(Entity entity) throws DxfFormatException {
        count(entity);
        Link link = entity.type().equals("ARC") ? Link.arc(entity) : Link.line(entity);
        if (link.isFull()) {
            traces.add(Trace.circle(entity));
        } else {
            Origin origin = entity.origin();
            loose.computeIfAbsent(origin.layer(), layer -> new Joining(traces)).add(origin, link);
        }
    }

    List<Outline> outlines(double unitMm) throws DxfFormatException {
        for (Joining layer : loose.values()) {
            layer.join(unitMm);
        }
        List<Outline> outlines = new ArrayList<>();
        for (Trace trace : traces) {
            outlines.add(trace.outline(unitMm));
        }
        return outlines;
    }
}
