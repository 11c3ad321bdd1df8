package dev.calotte.cli.brief;

import dev.calotte.model.Board;
import dev.calotte.model.Card;
import dev.calotte.model.ModelKind;
import dev.calotte.model.ModelSpec;
import dev.calotte.problem.Problem.Code;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import dev.calotte.solid.PrintSpec;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Reads the section {@code model}. With a scale alone there is the solid model only; drawings for a cutter need to know
 * {@code sheet} and {@code thickness}.
 */
final class ModelReader {

    private static final double USUAL_SCALE = 20;
    private static final String SHEET = "Write for example sheet: [600 mm, 300 mm].";
    private static final String CARD = "Write for example card: [420 mm, 297 mm].";
    private static final String THICKNESS = "Write for example thickness: 3 mm, as measured.";

    private final Fields model;
    private final UnitSystem units;

    private ModelReader(Fields model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    /**
     * What the section says.
     *
     * @param print how the solid model is printed
     * @param spec what is cut for a model; nothing unless the brief says of what, or where that was refused
     */
    record Model(PrintSpec print, Optional<ModelSpec> spec) {}

    /** The bed is that of the jigs: where there are none, it is not known. */
    static Model read(Fields model, UnitSystem units, Optional<JigSpec> jigs) {
        return new ModelReader(model, units).model(jigs.map(JigSpec::bed));
    }

    private Model model(Optional<Bed> bed) {
        double scale = model.read("scale", USUAL_SCALE, Numbers::scale);
        PrintSpec print = new PrintSpec(
                scale,
                model.read("solid", PrintSpec.Shape.BODY, Words.of(PrintSpec.Shape.values())),
                model.read("wall", PrintSpec.USUAL_WALL_MM, Measured.notBelowZero(units)),
                model.read("rod", PrintSpec.USUAL_ROD_MM, Measured.notBelowZero(units)),
                bed);
        Optional<List<Double>> sheet = size("sheet", Measured.pair(units, SHEET));
        Optional<List<Double>> card = size("card", Measured.pair(units, CARD)).or(() -> sheet);
        double tab = model.read("tab", Card.USUAL_TAB_MM, Measured.size(units));
        List<ModelKind> kinds =
                model.list("kind", List.of(ModelKind.SLOTTED, ModelKind.NET), Words.of(ModelKind.values()));
        Optional<Board> board = board(sheet);
        requireBoth();
        model.close();
        return new Model(
                print,
                board.map(b -> new ModelSpec(
                        scale, b, new Card(card.get().get(0), card.get().get(1), tab), kinds)));
    }

    private <T> Optional<T> size(String key, Function<Node, T> reader) {
        return model.read(key, Optional.empty(), reader.andThen(Optional::of));
    }

    /** Whoever names anything that is cut wants it cut. */
    private void requireBoth() {
        if (List.of("sheet", "thickness", "kerf", "fit", "disc", "card", "tab", "kind").stream()
                .anyMatch(model::has)) {
            model.require("sheet", SHEET);
            model.require("thickness", THICKNESS);
        }
    }

    private Optional<Board> board(Optional<List<Double>> sheet) {
        Optional<Double> thickness = size("thickness", Measured.thin(units));
        double kerf = model.read("kerf", 0.0, Measured.notBelowZero(units));
        double fit = model.read("fit", Board.SLIP_FIT_MM, Measured.ofEitherSign(units));
        Optional<Double> disc = size("disc", Measured.size(units));
        if (thickness.isEmpty() || !leavesSlots(thickness.get(), kerf, fit) || sheet.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Board(
                sheet.get().get(0),
                sheet.get().get(1),
                thickness.get(),
                kerf,
                fit,
                disc.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
    }

    private boolean leavesSlots(double thickness, double kerf, double fit) {
        boolean leaves = kerf + Math.abs(fit) < thickness;
        if (!leaves) {
            model.refuse(
                    "thickness",
                    new Refusal(
                            Code.IMPOSSIBLE,
                            "kerf and fit leave no slot for a board so thin.",
                            "Let kerf and fit together be less than thickness."));
        }
        return leaves;
    }
}
