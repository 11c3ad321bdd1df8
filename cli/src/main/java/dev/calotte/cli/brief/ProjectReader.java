package dev.calotte.cli.brief;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.dome.DomeSpec;
import dev.calotte.export.Finish;
import dev.calotte.output.Extras;
import dev.calotte.problem.Problem.Code;
import dev.calotte.solid.JigSpec;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads all sections of a brief. What each key means, and which have no effect, is said here and in the readers beside. */
final class ProjectReader {

    /** Common practice, no source. */
    private static final double USUAL_SPARES = 0.05;

    private final Fields top;
    private final String title;
    private final UnitSystem units;
    private final OutlineFiles outlines;
    private final List<Fields> coverFields = new ArrayList<>();

    private ProjectReader(Fields top, OutlineFiles outlines) {
        this.top = top;
        this.outlines = outlines;
        this.title = top.read("title", "Dome", Values::title);
        this.units = top.read("units", UnitSystem.METRIC, Words.of(UnitSystem.values()));
    }

    /** The project; wherever a problem was noted it holds a stopgap. */
    static Project read(Node.Mapping root, Problems problems, OutlineFiles outlines) {
        Fields top = Fields.top(root, problems);
        Project project = new ProjectReader(top, outlines).project();
        top.close();
        return project;
    }

    private Project project() {
        Fields dome = top.section("dome");
        Fields size = top.section("size");
        FrameReader.Frame frame = FrameReader.read(top.section("frame"), units, outlines);
        List<Covering> covers = covers();
        SizeWish wish = SizeReader.read(size, units, covers);
        DomeReader reader = new DomeReader(dome, units);
        double riserMm = reader.riserMm();
        DomeSpec spec = reader.spec(wish.known());
        Optional<JigSpec> jigs = JigsReader.read(top, units);
        ModelReader.Model model = ModelReader.read(top.section("model"), units, jigs);
        Fields output = top.section("output");
        double kerfMm = kerfMm(output, covers);
        Finish finish = OutputReader.read(output, units);
        List<OpeningRequest> openings = OpeningsReader.read(top);
        AssemblySpec assembly = AssemblyReader.read(top.section("assembly"));
        checkOrder(wish, covers);
        return new Project(
                title,
                units,
                spec,
                riserMm,
                openings,
                frame.joinery(),
                frame.bars(),
                wish,
                covers,
                new Extras(Optional.of(model.print()), model.spec(), jigs),
                top.read("spares", USUAL_SPARES, Numbers::share),
                assembly,
                new Output(kerfMm, finish, files()));
    }

    private List<Covering> covers() {
        List<Covering> covers = new ArrayList<>();
        for (Fields item : top.sections("covers")) {
            Covering covering = new CoverReader(item, units, outlines).covering();
            String name = covering.cover().name();
            if (item.sound("name")
                    && covers.stream().anyMatch(c -> c.cover().name().equalsIgnoreCase(name))) {
                item.refuse("name", new Refusal(Code.CONFLICT, "another cover is called " + name + ".", "Rename one."));
            }
            coverFields.add(item);
            covers.add(covering);
        }
        return List.copyOf(covers);
    }

    /** The largest dome from so much stock is looked for with plans in any order. */
    private void checkOrder(SizeWish wish, List<Covering> covers) {
        for (int cover = 0; cover < covers.size(); cover++) {
            if (covers.get(cover).byPatches()
                    && wish instanceof SizeWish.WidestFrom from
                    && from.cover().equals(covers.get(cover).cover().name())) {
                coverFields
                        .get(cover)
                        .refuse(
                                "cut-by",
                                new Refusal(
                                        Code.CONFLICT,
                                        "size.widest-from looks for plans that use the least of this stock.",
                                        "Write cut-by: stock, or give the size otherwise."));
            }
        }
    }

    private double kerfMm(Fields output, List<Covering> covers) {
        KerfReader kerf = new KerfReader(output, units);
        for (int cover = 0; cover < covers.size(); cover++) {
            kerf.check(coverFields.get(cover), covers.get(cover));
        }
        return kerf.kerfMm();
    }

    private List<Section> files() {
        List<Section> all = List.of(Section.values());
        return top.list("files", all, Words.of(Section.values())).stream()
                .sorted()
                .toList();
    }
}
