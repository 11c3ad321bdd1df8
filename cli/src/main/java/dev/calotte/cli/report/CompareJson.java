package dev.calotte.cli.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.calotte.cli.Rivals;
import dev.calotte.compare.BarUse;
import dev.calotte.compare.Column;
import dev.calotte.compare.Compared;
import dev.calotte.compare.Comparison;
import dev.calotte.compare.Counts;
import dev.calotte.compare.InCommon;
import dev.calotte.compare.RuledOut;
import dev.calotte.compare.StockUse;
import dev.calotte.compare.Work;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Measures;
import dev.calotte.dome.Size;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Writes a comparison for other programs: {@code format: "calotte-compare/1"}. Lengths are millimetres, areas square
 * metres, volumes cubic metres; what is not known is null.
 */
public final class CompareJson {

    private static final String FORMAT = "calotte-compare/1";

    private final JsonWriter json;
    private final Rivals rivals;

    private CompareJson(Rivals rivals, JsonGenerator generator) {
        this.json = new JsonWriter(generator);
        this.rivals = rivals;
    }

    /**
     * Writes a comparison.
     *
     * @param rivals the domes
     * @param out where to write; flushed and left open
     */
    public static void write(Rivals rivals, Writer out) {
        try (JsonGenerator generator =
                new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
            generator.setPrettyPrinter(new LinePerElement());
            CompareJson writer = new CompareJson(rivals, generator);
            writer.json.object(writer::all);
            generator.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void all() throws IOException {
        Comparison comparison = rivals.comparison();
        json.text("format", FORMAT);
        json.text("title", rivals.project().title());
        json.text("units", DomeName.word(rivals.project().units()));
        json.object("same", this::common);
        json.text("sortedBy", comparison.sortedBy().toString());
        json.texts(
                "criteria", comparison.criteria().stream().map(Column::toString).toList());
        json.objects("domes", comparison.rows(), this::row);
        json.objects("ruledOut", comparison.ruledOut(), this::ruledOut);
    }

    private void common() throws IOException {
        InCommon common = rivals.common();
        if (common instanceof InCommon.StockOf stock) {
            json.text("stockOf", stock.cover());
        } else if (common instanceof InCommon.LongestCut longest) {
            json.number("longestCut", longest.mm());
        } else {
            Size size = ((InCommon.OfSize) common).size();
            switch (size.measure()) {
                case RADIUS -> json.number("radius", size.value());
                case FLOOR_DIAMETER -> json.number("floorDiameter", size.value());
                case HEIGHT -> json.number("height", size.value());
                case FLOOR_AREA -> json.number("floorArea", size.value() / 1e6);
                case LONGEST_STRUT -> json.number("longestStrut", size.value());
            }
        }
    }

    private void row(Compared row) throws IOException {
        json.flag("own", row.candidate().own());
        json.flag("best", row.best());
        json.integer("steps", row.candidate().steps());
        spec(row.spec());
        Measures m = row.measures();
        json.number("radius", m.radiusMm());
        json.number("floorDiameter", m.floorDiameterMm());
        json.number("height", m.heightMm());
        json.fineNumber("floorArea", m.floorAreaMm2() / 1e6);
        json.fineNumber("room", row.roomMm3() / 1e9);
        json.number("baseSpread", m.baseSpreadMm());
        counts(row.counts());
        work(row.work());
        json.flag("planned", row.planned());
        json.objects("covers", row.stocks(), this::stock);
        bars(row);
        number("price", row.price());
        number("perRoom", row.perRoom());
        number("mass", row.massKg());
    }

    private void spec(DomeSpec spec) throws IOException {
        json.text("solid", DomeName.word(spec.solid()));
        json.integers(
                "breakdown", List.of(spec.breakdown().b(), spec.breakdown().c()));
        json.text("spacing", DomeName.word(spec.spacing()));
        json.text("up", DomeName.word(spec.up()));
        if (spec.keep() instanceof Keep.AboveHeight) {
            json.object("keep", () -> json.number("above", CompareCsv.aboveMm(spec)));
        } else {
            json.text("keep", spec.keep().toString());
        }
    }

    private void counts(Counts counts) throws IOException {
        json.integer("panels", counts.panels());
        json.integer("panelKinds", counts.panelKinds());
        json.integer("handedKinds", counts.handedKinds());
        json.integer("struts", counts.struts());
        json.integer("strutKinds", counts.strutKinds());
        json.integer("hubs", counts.hubs());
        json.integer("hubKinds", counts.hubKinds());
    }

    private void work(Work work) throws IOException {
        json.text("fits", CompareCsv.fits(work.fits()));
        json.number("joints", work.jointMm());
        json.number("seams", work.seamMm());
        json.number("width", work.widthMm());
        number("spare", work.spareMm());
        number("difference", work.differenceMm());
        json.flag("close", work.isClose());
    }

    private void stock(StockUse use) throws IOException {
        json.text("name", use.cover());
        json.integer("sheets", use.sheets());
        json.number("roll", use.rollMm());
        json.number("utilisation", use.utilisation());
        number("price", use.price());
    }

    private void bars(Compared row) throws IOException {
        if (row.bars().isEmpty()) {
            json.nothing("bars");
            return;
        }
        BarUse use = row.bars().get();
        json.object("bars", () -> {
            json.integer("used", use.count());
            json.flag("planned", use.planned());
            json.number("length", use.lengthMm());
            json.number("utilisation", use.utilisation());
            number("price", use.price());
        });
    }

    private void ruledOut(RuledOut out) throws IOException {
        DomeSpec shape = out.candidate().shape();
        json.flag("own", out.candidate().own());
        json.text("solid", DomeName.word(shape.solid()));
        json.integers(
                "breakdown", List.of(shape.breakdown().b(), shape.breakdown().c()));
        json.text("spacing", DomeName.word(shape.spacing()));
        json.text("up", DomeName.word(shape.up()));
        json.text(
                "keep",
                shape.keep() instanceof Keep.AboveHeight
                        ? "above"
                        : shape.keep().toString());
        json.text("where", out.problem().where());
        json.text("what", out.problem().what());
        json.text("mend", out.problem().mend());
    }

    private void number(String name, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.number(name, value.getAsDouble());
        } else {
            json.nothing(name);
        }
    }
}
