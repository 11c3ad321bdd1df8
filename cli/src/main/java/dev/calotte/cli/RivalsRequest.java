package dev.calotte.cli;

import dev.calotte.cli.brief.Covering;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.compare.Cladding;
import dev.calotte.compare.InCommon;
import dev.calotte.compare.Request;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Optional;

/** Turns a brief into a request: its dome without openings, and what other domes have in common with it. */
final class RivalsRequest {

    private final Project project;
    private final DomeSpec own;
    private final Dome dome;

    RivalsRequest(Project project) {
        this.project = project;
        this.own = project.dome().withSize(FoundSize.of(project).size());
        this.dome = Dome.of(own);
    }

    Dome dome() {
        return dome;
    }

    Request of(Same same, Optional<String> cover) {
        return new Request(
                own,
                project.joinery(),
                project.bars(),
                project.covers().stream()
                        .map(c -> new Cladding(c.cover(), c.stocks(), c.spacingMm()))
                        .toList(),
                common(same, cover));
    }

    private InCommon common(Same same, Optional<String> cover) {
        return switch (same) {
            case BRIEF -> ofBrief();
            case STOCK -> new InCommon.StockOf(stockOf(cover));
            case RADIUS -> ofSize(Measure.RADIUS);
            case FLOOR_DIAMETER -> ofSize(Measure.FLOOR_DIAMETER);
            case FLOOR_AREA -> ofSize(Measure.FLOOR_AREA);
            case HEIGHT -> ofSize(Measure.HEIGHT);
            case LONGEST_STRUT -> ofSize(Measure.LONGEST_STRUT);
        };
    }

    private InCommon ofBrief() {
        SizeWish size = project.size();
        if (size instanceof SizeWish.Given given) {
            return new InCommon.OfSize(given.size());
        }
        if (size instanceof SizeWish.LongestCut wish) {
            return new InCommon.LongestCut(wish.mm());
        }
        if (size instanceof SizeWish.WidestFor wish) {
            return new InCommon.StockOf(wish.cover());
        }
        return ofSize(dome.baseRing().isEmpty() ? Measure.RADIUS : Measure.FLOOR_DIAMETER);
    }

    private InCommon ofSize(Measure measure) {
        double value = switch (measure) {
            case RADIUS -> dome.measures().radiusMm();
            case FLOOR_DIAMETER -> dome.measures().floorDiameterMm();
            case FLOOR_AREA -> dome.measures().floorAreaMm2();
            case HEIGHT -> dome.measures().heightMm();
            case LONGEST_STRUT ->
                dome.struts().stream().mapToDouble(Strut::lengthMm).max().orElseThrow();
        };
        if (value <= 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "dome.keep",
                    "a whole sphere has no floor to be the same.",
                    "Use --same radius, --same height or --same longest-strut.");
        }
        return new InCommon.OfSize(new Size(measure, value));
    }

    /** The cover that is named, or that sizes the brief's dome, or the first that has a stock. */
    private String stockOf(Optional<String> cover) {
        String sizing = project.size() instanceof SizeWish.WidestFor wish ? wish.cover() : "";
        return project.covers().stream()
                .filter(c -> !c.stocks().isEmpty())
                .map(Covering::cover)
                .map(c -> c.name())
                .filter(name -> cover.map(name::equals).orElse(sizing.isEmpty() || name.equals(sizing)))
                .findFirst()
                .orElseThrow(() -> new CalotteException(
                        Code.MISSING,
                        "covers",
                        cover.map(name -> "no cover " + name + " with a stock is there to size domes by.")
                                .orElse("no cover has a stock to size domes by."),
                        "Name a cover that has one, or compare domes of the same size."));
    }
}
