package dev.calotte.compare;

import dev.calotte.choose.WidestFor;
import dev.calotte.compare.InCommon.LongestCut;
import dev.calotte.compare.InCommon.OfSize;
import dev.calotte.compare.InCommon.StockOf;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Measures;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;

/** Sizes candidates by what they have in common. */
final class CandidateSize {

    private final Request request;

    CandidateSize(Request request) {
        this.request = request;
    }

    /** The candidate in its size; the exception says why there is none. */
    DomeSpec of(Candidate candidate) {
        InCommon common = request.common();
        if (common instanceof StockOf stock) {
            return candidate.at(widestMm(candidate, stock.cover()));
        }
        Size size = common instanceof LongestCut longest
                ? dev.calotte.parts.LongestCut.size(candidate.shape(), request.joinery(), longest.mm())
                : ((OfSize) common).size();
        if (candidate.own() && size.equals(request.own().size())) {
            return request.own();
        }
        return candidate.levelMm() == 0
                ? candidate.shape().withSize(size)
                : candidate.at(radiusMm(candidate.shape(), size));
    }

    private double widestMm(Candidate candidate, String name) {
        Cladding cladding = request.covers().stream()
                .filter(each -> each.cover().name().equals(name))
                .findFirst()
                .orElseThrow();
        return WidestFor.of(candidate::at, request.joinery(), cladding.cover(), cladding.stocks())
                .size()
                .value();
    }

    /** What grows with the radius gives it, because the part of the sphere is the same at every radius. */
    private static double radiusMm(DomeSpec shape, Size size) {
        if (size.measure() == Size.Measure.RADIUS) {
            return size.value();
        }
        double times = size.value() / measured(Dome.of(shape), size.measure());
        return Candidate.UNIT_MM * (size.measure() == Size.Measure.FLOOR_AREA ? Math.sqrt(times) : times);
    }

    static double measured(Dome dome, Size.Measure measure) {
        Measures measures = dome.measures();
        return switch (measure) {
            case RADIUS -> measures.radiusMm();
            case FLOOR_DIAMETER -> measures.floorDiameterMm();
            case HEIGHT -> measures.heightMm();
            case FLOOR_AREA -> measures.floorAreaMm2();
            case LONGEST_STRUT ->
                dome.struts().stream().mapToDouble(Strut::lengthMm).max().orElseThrow();
        };
    }
}
