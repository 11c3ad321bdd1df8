package dev.calotte.check;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.check.RecordedCover.Sheet;
import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.NotchedEdge;
import dev.calotte.pattern.Side;
import dev.calotte.stock.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** What is recorded of a dome, as the file of it would be read again. */
final class Records {

    private Records() {}

    static RecordedDome dome(Parts parts) {
        Dome dome = parts.dome();
        PieceMarks marks = new PieceMarks(parts);
        return new RecordedDome(
                new RecordedDome.Figures(
                        dome.measures().radiusMm(),
                        dome.measures().heightMm(),
                        dome.measures().surfaceAreaMm2() / 1e6),
                dome.hubs().stream().map(Hub::position).toList(),
                parts.strutKinds().stream().map(Records::strutKind).toList(),
                dome.struts().stream().map(strut -> strut(parts, marks, strut)).toList(),
                parts.panelKinds().stream().map(Records::panelKind).toList(),
                dome.panels().stream()
                        .map(panel -> new RecordedDome.Panel(
                                marks.of(panel), parts.kindOf(panel).mark(), panel.hubs(), panel.row()))
                        .toList(),
                parts.hubKinds().stream().map(Records::hubKind).toList(),
                dome.hubs().stream()
                        .map(hub -> new RecordedDome.Hub(
                                marks.of(hub), parts.kindOf(hub).mark(), hub.index(), hub.row()))
                        .toList(),
                !dome.openings().isEmpty());
    }

    private static List<Double> degrees(DoubleStream rad) {
        return rad.map(StrictMath::toDegrees).boxed().toList();
    }

    private static RecordedDome.StrutKind strutKind(StrutKind kind) {
        return new RecordedDome.StrutKind(
                kind.mark(),
                kind.lengthMm(),
                kind.cutLengthMm(),
                kind.chordFactor(),
                kind.count(),
                kind.gapsMm(),
                StrictMath.toDegrees(kind.axialAngleRad()),
                kind.mergeErrorMm(),
                kind.flatEnds().isPresent());
    }

    private static RecordedDome.Strut strut(Parts parts, PieceMarks marks, Strut strut) {
        return new RecordedDome.Strut(
                marks.of(strut),
                parts.kindOf(strut).mark(),
                strut.from(),
                strut.to(),
                StrictMath.toDegrees(strut.dihedralRad().orElse(Double.NaN)));
    }

    private static RecordedDome.PanelKind panelKind(PanelKind kind) {
        Triangle t = kind.triangle();
        return new RecordedDome.PanelKind(
                kind.mark(),
                kind.hand().name().toLowerCase(Locale.ROOT),
                kind.count(),
                List.of(t.a(), t.b(), t.c()),
                degrees(IntStream.range(0, 3).mapToDouble(t::angleRad)),
                IntStream.range(0, 3).mapToObj(t::altitude).toList(),
                t.narrowestWidth(),
                t.area() / 1e6);
    }

    private static RecordedDome.HubKind hubKind(HubKind kind) {
        return new RecordedDome.HubKind(
                kind.mark(),
                kind.hand().name().toLowerCase(Locale.ROOT),
                kind.count(),
                kind.strutMarks(),
                degrees(kind.gapsRad().stream().mapToDouble(rad -> rad)),
                degrees(kind.axialAnglesRad().stream().mapToDouble(rad -> rad)),
                kind.open());
    }

    /** A cover that is not laid on any stock. */
    static RecordedCover cover(CoverFit fit) {
        return cover(fit, List.of(), 0, false);
    }

    static RecordedCover cover(CoverPlan plan, double spacingMm) {
        List<Sheet> sheets = IntStream.range(0, plan.plan().sheets().size())
                .mapToObj(number -> sheet(plan, number))
                .toList();
        return cover(plan.fit(), sheets, spacingMm, true);
    }

    private static RecordedCover cover(CoverFit fit, List<Sheet> sheets, double spacingMm, boolean planned) {
        List<Piece> pieces = new ArrayList<>();
        for (PatternFit each : fit.fits()) {
            each.pieces().forEach(piece -> pieces.add(piece(each, piece)));
        }
        return new RecordedCover(
                fit.patterns().cover().name(),
                fit.patterns().cover().sheeting().planeMm(),
                spacingMm,
                pieces,
                sheets,
                planned);
    }

    static Ring ring(Polygon polygon) {
        return new Ring(polygon.corners());
    }

    private static Piece piece(PatternFit fit, CutPiece piece) {
        boolean notched = fit.pattern().sides().stream()
                .flatMap(side -> side.notches().stream())
                .anyMatch(notch -> notch.depthMm() > 0);
        return new Piece(
                piece.mark(),
                fit.pattern().kind().mark(),
                fit.pattern().count(),
                ring(piece.net()),
                ring(piece.outline()),
                ring(notched ? new NotchedEdge(fit.pattern(), piece, 0).outline() : piece.outline()),
                piece.outer().map(Records::ring),
                piece.holes().stream()
                        .map(hole -> new RecordedCover.Hole(hole.x(), hole.y(), hole.diameterMm()))
                        .toList(),
                fit.pattern().sides().stream().map(Side::allowanceMm).toList(),
                !piece.seams().isEmpty());
    }

    private static Sheet sheet(CoverPlan plan, int number) {
        CutSheet sheet = plan.plan().sheets().get(number);
        PieceMarks marks = new PieceMarks(plan.fit().patterns().parts());
        double length = sheet.lengthMm();
        double width = sheet.widthMm();
        Ring border = sheet.stock() instanceof Outline outline
                ? ring(outline.border())
                : Ring.of(List.of(0.0, 0.0, length, 0.0, length, width, 0.0, width));
        List<RecordedCover.Part> parts = new ArrayList<>();
        for (int i = 0; i < sheet.parts().size(); i++) {
            Panel panel = plan.panels().get(number).get(i);
            parts.add(part(sheet.parts().get(i), marks.of(panel)));
        }
        return new Sheet(length, width, border, sheet.stock().marginMm(), parts);
    }

    private static RecordedCover.Part part(Placed placed, String panel) {
        return new RecordedCover.Part(
                placed.mark(),
                panel,
                placed.xMm(),
                placed.yMm(),
                StrictMath.toDegrees(placed.turnRad()),
                placed.mirrored(),
                ring(placed.outline()));
    }

    static List<BarCheck.Need> needs(Parts parts) {
        return BarNeeds.of(parts).stream()
                .map(cut -> new BarCheck.Need(cut.mark(), cut.lengthMm(), cut.count()))
                .toList();
    }

    static List<BarCheck.Bar> bars(BarPlan plan) {
        return plan.bars().stream()
                .map(bar -> new BarCheck.Bar(
                        bar.bar().lengthMm(),
                        bar.cuts().stream()
                                .map(cut -> new BarCheck.Cut(cut.mark(), cut.lengthMm()))
                                .toList(),
                        bar.leftMm()))
                .toList();
    }

    /** The one piece of a cover, by its mark. */
    static Optional<Piece> piece(RecordedCover cover, String mark) {
        return cover.pieces().stream()
                .filter(piece -> piece.mark().equals(mark))
                .findFirst();
    }
}
