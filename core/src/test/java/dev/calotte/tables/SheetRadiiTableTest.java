package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.choose.WidestFor;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.pattern.Cover;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

class SheetRadiiTableTest {

    private static double radius(Row row, Stock stock) {
        Solid solid = Solid.valueOf(row.input("base").asText().toUpperCase(Locale.ROOT));
        DomeSpec spec = DomeSpec.of(solid, Breakdown.of(row.input("b").asInt()), Size.radius(1));
        return WidestFor.of(spec, Joinery.nodeToNode(), Cover.of("panels"), List.of(stock))
                .size()
                .value();
    }

    @Table("sheet-radii")
    void theLargestDomeOfPanelsFromASheetIsTheKnownOne(Row row) {
        JsonNode sheet = row.input("sheet");
        double known = row.number("radius");
        assertThat(radius(row, new Sheet(sheet.get(1).asDouble(), sheet.get(0).asDouble(), 0, Terms.OPEN)))
                .isCloseTo(known, within(1e-6 * known));
        double strip = row.number("strip_radius");
        assertThat(radius(row, new Roll(sheet.get(0).asDouble(), 0, OptionalDouble.empty(), Terms.OPEN)))
                .isCloseTo(strip, within(1e-6 * strip));
    }
}
