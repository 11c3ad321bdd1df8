package dev.calotte.model;

import dev.calotte.document.Drawing;
import dev.calotte.model.SheetDrawings.Heading;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The drawings of a scale model, one for each sheet, for a cutter that follows the lines. Parts are drawn as seen from
 * outside the dome. What stands for the wall under a base ring, and the covers, is left out.
 *
 * <pre>{@code
 * List<Drawing> kit = ModelDrawings.of(parts, ModelSpec.of(20, Board.of(600, 300, 3, 0.15)));
 * }</pre>
 */
public final class ModelDrawings {

    /** Of more panels or struts a model is not made: its parts could not be told apart. */
    public static final int MOST_PARTS = 1500;

    private final Parts parts;
    private final ModelSpec spec;

    private ModelDrawings(Parts parts, ModelSpec spec) {
        this.parts = parts;
        this.spec = spec;
    }

    /**
     * Draws a model.
     *
     * @param parts the parts of the dome
     * @param spec what the model is made of
     * @return documents {@code model/kit-01} and so on with {@code model/fit-comb}, {@code model/net-01} and
     *     {@code model/panels-01} and so on, as far as they are asked for
     * @throws CalotteException if discs, struts or pieces of the net are too small or too large for what they are cut from,
     *     or there are too many of them
     */
    public static List<Drawing> of(Parts parts, ModelSpec spec) {
        ModelDrawings drawings = new ModelDrawings(parts, spec);
        drawings.check();
        List<Drawing> all = new ArrayList<>();
        for (ModelKind kind : spec.kinds()) {
            all.addAll(
                    switch (kind) {
                        case SLOTTED -> drawings.slotted();
                        case NET -> drawings.folded("net", "Net");
                        case PANELS -> drawings.folded("panels", "Panels");
                    });
        }
        return List.copyOf(all);
    }

    private void check() {
        int most = Math.max(parts.dome().panels().size(), parts.dome().struts().size());
        if (most > MOST_PARTS) {
            throw new CalotteException(
                    Code.TOO_LARGE,
                    "model.sheet",
                    "a model of " + most + " parts is not made, of more than " + MOST_PARTS
                            + " none could be told apart.",
                    "Leave the key out, or model the dome with a lower breakdown.");
        }
    }

    private List<Drawing> slotted() {
        Board board = spec.board();
        List<Drawing> all = new ArrayList<>(SheetDrawings.of(board.lengthMm(), board.widthMm(), board)
                .of(new Heading("kit", "Slotted kit " + scale(), "model.sheet"), SlottedKit.of(parts, spec)));
        all.add(new FitComb(board).drawing(spec.scale()));
        return all;
    }

    private List<Drawing> folded(String name, String title) {
        Card card = spec.card();
        SheetDrawings sheets = SheetDrawings.of(card.lengthMm(), card.widthMm(), spec.board());
        Tabs tabs = new Tabs(new Shell(parts.dome(), spec.scale()), card.tabMm());
        double room = 1e-6 + spec.board().kerfMm() + sheets.sheet().marginMm() * 2;
        Unfolding unfolding = new Unfolding(
                tabs,
                new Vector2D(card.lengthMm() - room, card.widthMm() - room),
                spec.board().spacingMm());
        List<NetPiece> pieces = name.equals("net") ? unfolding.pieces() : unfolding.single();
        return sheets.of(
                new Heading(name, title + " " + scale() + ", the outside", "model.card"),
                new NetKit(parts, tabs, pieces).parts());
    }

    private String scale() {
        return "1:" + NumberText.trimmed(spec.scale(), 3);
    }
}
