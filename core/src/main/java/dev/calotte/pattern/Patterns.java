package dev.calotte.pattern;

import dev.calotte.dome.Panel;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.PatternKey.Code;
import dev.calotte.pattern.PatternKeys.Slot;
import dev.calotte.problem.CalotteException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The patterns of a cover: one for each group of panels that are cut alike.
 *
 * <p>For example {@code Patterns.of(parts, Cover.of("glazing").with(Allowances.of(-2, 0))).list()}.
 *
 * <pre>{@code
 * List<String> marks = Patterns.of(parts, cover).list().stream().map(Pattern::mark).toList();
 * }</pre>
 */
public final class Patterns {

    private final Parts parts;
    private final Cover cover;
    private final PatternSorting sorting;
    private final List<Pattern> list;

    private Patterns(Parts parts, Cover cover) {
        this.parts = parts;
        this.cover = cover;
        this.sorting = new PatternSorting(parts, cover);
        this.list = IntStream.range(0, sorting.patterns.size())
                .mapToObj(this::pattern)
                .toList();
    }

    /**
     * Makes the patterns of a cover.
     *
     * @param parts the parts of the dome
     * @param cover how its pieces differ from the triangles between hub centres
     * @return its patterns
     * @throws CalotteException if an allowance, a relief or a row of holes uses up a panel
     */
    public static Patterns of(Parts parts, Cover cover) {
        return new Patterns(parts, cover);
    }

    /**
     * The cover that they belong to.
     *
     * @return the cover
     */
    public Cover cover() {
        return cover;
    }

    /**
     * The parts that they were made from.
     *
     * @return the parts
     */
    public Parts parts() {
        return parts;
    }

    /**
     * The patterns.
     *
     * @return in the order of their panel kinds; unmodifiable
     */
    public List<Pattern> list() {
        return list;
    }

    /**
     * The pattern of a panel.
     *
     * @param panel a panel of the dome
     * @return what it is cut by
     */
    public Pattern of(Panel panel) {
        return list.get(sorting.patternOf[panel.index()]);
    }

    /**
     * How a panel lies in its pattern.
     *
     * @param panel a panel of the dome
     * @return which of the panel's hubs, 0, 1 or 2, is the pattern's first corner; the others follow counter-clockwise
     */
    public int firstHub(Panel panel) {
        return sorting.turnOf[panel.index()];
    }

    /**
     * The panel that shares a side.
     *
     * @param panel a panel of the dome
     * @param side a side of its pattern
     * @return the neighbour across that side, if there is one
     */
    public Optional<Panel> across(Panel panel, int side) {
        int strut = panel.struts().get((firstHub(panel) + side) % 3);
        int other = sorting.neighbours.across(panel, strut);
        return other == Neighbours.NONE
                ? Optional.empty()
                : Optional.of(parts.dome().panels().get(other));
    }

    private Pattern pattern(int place) {
        String mark = sorting.mark(place);
        PanelKind kind = sorting.kind(place);
        List<Side> sides =
                IntStream.range(0, 3).mapToObj(side -> side(place, side)).toList();
        PatternShape shape = new PatternShape(cover, mark, sides, parts.dome().radiusMm());
        Polygon outline = shape.outline();
        boolean bevelled = cover.sheeting().bevelled() && cover.sheeting().thicknessMm() > 0;
        return new Pattern(
                mark,
                kind,
                sorting.count(place),
                sorting.mirror(place),
                sides,
                new CutPiece(
                        mark,
                        shape.net(),
                        outline,
                        bevelled ? Optional.of(shape.outer()) : Optional.empty(),
                        cover.fasteners().isPresent()
                                ? HoleRows.of(cover, mark, outline.hull(), shape.net())
                                : List.of(),
                        List.of(),
                        grainRad(place, shape)));
    }

    private OptionalDouble grainRad(int place, PatternShape shape) {
        List<Slot> slots = sorting.patterns.get(place).slots();
        return IntStream.range(0, 3)
                .filter(side -> slots.get(side).foot())
                .mapToObj(side -> shape.hubs().outward(side))
                .mapToDouble(outward -> StrictMath.atan2(outward.getY(), outward.getX()))
                .findFirst();
    }

    private Side side(int place, int side) {
        PatternKey key = sorting.patterns.get(place);
        Slot slot = key.slots().get(side);
        int strut = PatternKeys.struts(sorting.kind(place)).get(side);
        double lengthMm = parts.strutKind(strut).lengthMm();
        OptionalDouble dihedral = sorting.keys.dihedralRad(slot);
        double allowanceMm = allowanceMm(slot);
        Code code = key.codes().get(side);
        return new Side(
                strut,
                lengthMm,
                dihedral,
                cover.sheeting().planeMm() * StrictMath.tan((Math.PI - dihedral.orElse(Math.PI)) / 2),
                allowanceMm,
                slot.lap(),
                new NotchCodes(sorting.joints(), cover.allowances()).notches(code, lengthMm, allowanceMm));
    }

    private double allowanceMm(Slot slot) {
        if (!slot.joined()) {
            return cover.allowances().baseMm();
        }
        return slot.lap() == Lap.OVER
                ? cover.allowances().wideMm()
                : cover.allowances().narrowMm();
    }
}
